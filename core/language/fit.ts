import { kinds } from './kinds.ts';
import { calibrated, type Unseen } from './calibrate.ts';
import { cardNames } from './cards.ts';
import { marksOf, type Batch, type Line, type Mark } from './labelled.ts';
import { hasty } from './learn/disturb.ts';
import { featuresOf, type FeatureGroup } from './learn/features.ts';
import { pack, probabilities, type Packed } from './learn/packed.ts';
import { numbersFrom } from './learn/random.ts';
import { roleFeatures } from './learn/role-features.ts';
import { fitSoftmax, type Example, type Fitting } from './learn/softmax.ts';
import { vectorOf, vocabularyIn, vocabularyOf } from './learn/vocabulary.ts';
import type { Model } from './model-file.ts';
import { ofNames, partNames, type PartName } from './parts.ts';
import { withPart } from './roles.ts';
import { scan } from './tokens.ts';

/** Features met in fewer messages are noise. */
const LEAST = 2;
/** Features kept in the packed models: what makes the file some 5 MB. */
const MOST_KINDS = 50_000;
const MOST_CARDS = 16_000;
const MOST_PARTS = 28_000;
const MOST_OFS = 10_000;
/** Of a message that wants several things, the share of the first. */
const FIRST_SHARE = 0.75;

const KINDS_FITTING: Fitting = { epochs: 8, rate: 0.7, decay: 1e-4, seed: 7, dropped: 0.5 };
const CARDS_FITTING: Fitting = { epochs: 10, rate: 0.7, decay: 1e-4, seed: 8, dropped: 0.5 };
const PARTS_FITTING: Fitting = { epochs: 12, rate: 0.8, decay: 1e-5, seed: 9, dropped: 0.2 };

interface Wanted {
  readonly groups: readonly FeatureGroup[];
  readonly target: Example['target'];
  /** A disturbed copy: what only copies hold is not learnt of. */
  readonly isCopy?: boolean;
}

/** What the kinds are learnt from: every message, and each once more as typed in haste. */
export function fitKinds(lines: readonly Line[], temperature = 1): Packed {
  const random = numbersFrom(21);
  const wanted = lines.flatMap((line): Wanted[] => {
    const target = kindTarget(line);
    return [
      { groups: featuresOf(scan(line.text)), target },
      { groups: featuresOf(scan(hasty(line.text, random))), target, isCopy: true },
    ];
  });
  return fitted(wanted, kinds, MOST_KINDS, KINDS_FITTING, temperature);
}

export function fitCards(lines: readonly Line[], temperature = 1): Packed {
  const random = numbersFrom(22);
  const wanted = lines.flatMap((line): Wanted[] => {
    const label = cardNames.indexOf(`${line.kind}/${line.card ?? ''}`);
    if (label < 0 || line.calm === true) return [];
    return [
      { groups: featuresOf(scan(line.text)), target: [[label, 1]] },
      { groups: featuresOf(scan(hasty(line.text, random))), target: [[label, 1]], isCopy: true },
    ];
  });
  return fitted(wanted, cardNames, MOST_CARDS, CARDS_FITTING, temperature);
}

/** What the parts of numbers are learnt from: every marked message. */
export function fitRoles(lines: readonly Line[]): { readonly parts: Packed; readonly ofs: Packed } {
  const items = lines.flatMap(markedNumbers);
  const parts = items.map(({ groups, mark }): Wanted => ({
    groups,
    target: [[partNames.indexOf(mark.part), 1]],
  }));
  const ofs = items
    .filter(({ mark }) => mark.part !== 'none' && mark.part !== 'moment')
    .map(({ groups, mark }): Wanted => ({
      groups: withPart(groups, mark.part),
      target: [[ofNames.indexOf(mark.of), 1]],
    }));
  return {
    parts: fitted(parts, partNames, MOST_PARTS, PARTS_FITTING, 1),
    ofs: fitted(ofs, ofNames, MOST_OFS, PARTS_FITTING, 1),
  };
}

/** Each number of a marked message with its features; one that no mark covers plays no part. */
export function markedNumbers(
  line: Line,
): readonly { readonly groups: readonly FeatureGroup[]; readonly mark: Pick<Mark, 'part' | 'of'> }[] {
  const marks = marksOf(line);
  if (marks === undefined) return [];
  const scanned = scan(line.text);
  const before: PartName[] = [];
  return scanned.tokens.flatMap(({ number, start, end }, at) => {
    if (number === undefined) return [];
    const groups = roleFeatures({ scanned, at, before });
    const found = marks.find((mark) => mark.start < end && start < mark.end);
    const unmarked = {
      part: number.form === 'moment' ? ('moment' as const) : ('none' as const),
      of: 'nothing' as const,
    };
    const mark = found ?? unmarked;
    before.push(mark.part);
    return [{ groups, mark }];
  });
}

function kindTarget({ kind, also = [] }: Line): Example['target'] {
  const others = also.filter((other) => other !== kind);
  if (others.length === 0) return [[kinds.indexOf(kind), 1]];
  const share = (1 - FIRST_SHARE) / others.length;
  return [
    [kinds.indexOf(kind), FIRST_SHARE],
    ...others.map((other): [number, number] => [kinds.indexOf(other), share]),
  ];
}

function fitted(
  wanted: readonly Wanted[],
  labels: readonly string[],
  most: number,
  fitting: Fitting,
  temperature: number,
): Packed {
  const hashes = vocabularyOf(
    wanted.filter(({ isCopy }) => isCopy !== true).map(({ groups }) => groups),
    LEAST,
    most,
  );
  const vocabulary = vocabularyIn(hashes);
  const examples = wanted.map(({ groups, target }): Example => ({
    vector: vectorOf(groups, vocabulary),
    target,
  }));
  return pack(fitSoftmax(examples, hashes.length, labels.length, fitting), hashes, labels, temperature);
}

/** Groups of batches left out in turn when thresholds are found. */
const FOLDS = 5;

/** Everything a reader needs, from labelled batches. Pure and deterministic; some minutes. */
export function fitModel(batches: readonly Batch[], sentences: string): Model {
  const lines = batches.flatMap((batch) => batch.lines);
  return {
    sentences,
    thresholds: calibrated(
      unseenIn(batches)
        .filter(({ batch }) => isFullyLabelled(batch))
        .map(({ unseen }) => unseen),
    ),
    kinds: fitKinds(lines),
    cards: fitCards(lines),
    ...fitRoles(lines),
  };
}

/** Every message read by weights made without its own batch. */
export function unseenIn(
  batches: readonly Batch[],
): readonly { readonly batch: Batch; readonly unseen: Unseen }[] {
  return Array.from({ length: FOLDS }, (_, fold) => fold).flatMap((fold) => {
    const isOut = (at: number): boolean => at % FOLDS === fold;
    const packed = fitKinds(batches.filter((_, at) => !isOut(at)).flatMap(({ lines }) => lines));
    const vocabulary = vocabularyIn(packed.hashes);
    return batches
      .filter((_, at) => isOut(at))
      .flatMap((batch) => batch.lines.map((line) => ({ batch, line })))
      .map(({ batch, line }) => {
        const chances = probabilities(packed, vectorOf(featuresOf(scan(line.text)), vocabulary));
        const ranked = packed.labels
          .map((name, at) => ({ name, probability: chances[at] ?? 0 }))
          .sort((a, b) => b.probability - a.probability);
        return { batch, unseen: { line, kinds: ranked } };
      });
  });
}

/** Batches whose writers named every right reading and the calm ones: in the others a right guess can count as wrong. */
function isFullyLabelled({ lines }: Batch): boolean {
  return lines.some(({ calm }) => calm === true) && lines.some(({ also }) => also !== undefined);
}
