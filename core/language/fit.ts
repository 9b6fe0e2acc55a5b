import { kinds } from './kinds.ts';
import { calibrated, type Unseen } from './calibrate.ts';
import { fitCards, type CardText } from './fit-cards.ts';
import { foldOf } from './fold-of.ts';
import { fitRoles } from './fit-roles.ts';
import { fitStory } from './fit-story.ts';
import type { Batch, Line } from './labelled.ts';
import { hasty, sparse } from './learn/disturb.ts';
import { featuresOf } from './learn/features.ts';
import { fitted, type Wanted } from './learn/fitted.ts';
import { probabilities, type Packed } from './learn/packed.ts';
import { numbersFrom } from './learn/random.ts';
import type { Example, Fitting } from './learn/softmax.ts';
import { vectorOf, vocabularyIn } from './learn/vocabulary.ts';
import type { Model } from './model-file.ts';
import { scan } from './tokens.ts';

/** Features kept of the kinds: the most of the file's size. */
const MOST_KINDS = 58_000;
/** Of a message that wants several things, the share of the first. */
const FIRST_SHARE = 0.75;

const KINDS_FITTING: Fitting = { epochs: 6, rate: 0.7, decay: 1e-4, seed: 7, dropped: 0.5 };

/** What the kinds are learnt from: every message, and copies typed in haste and with words left out. */
export function fitKinds(lines: readonly Line[], temperature = 1): Packed {
  const wanted = disturbed(
    lines.map((line) => ({ text: line.text, target: kindTarget(line) })),
    21,
  );
  return fitted(wanted, kinds, MOST_KINDS, KINDS_FITTING, temperature);
}

/** Shares of words that copies of a message leave out. */
const FEW = 0.15;
const MANY = 0.3;

/** Messages with their disturbed copies. */
function disturbed(
  messages: readonly { readonly text: string; readonly target: Example['target'] }[],
  seed: number,
): readonly Wanted[] {
  const random = numbersFrom(seed);
  return messages.flatMap(({ text, target }): Wanted[] => [
    { groups: featuresOf(scan(text)), target },
    { groups: featuresOf(scan(hasty(text, random))), target, isCopy: true },
    { groups: featuresOf(scan(sparse(text, FEW, random))), target, isCopy: true },
    { groups: featuresOf(scan(sparse(hasty(text, random), MANY, random))), target, isCopy: true },
  ]);
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

/** Groups of batches left out in turn when thresholds are found. */
const FOLDS = 3;

/** Everything a reader needs, from labelled batches. Pure and deterministic; some minutes. */
export function fitModel(
  batches: readonly Batch[],
  cardTexts: readonly CardText[],
  sentences: string,
): Model {
  const lines = batches.flatMap((batch) => batch.lines);
  const unseenOf = unseenIn(batches);
  const kindsOf = new Map(unseenOf.map(({ unseen }) => [unseen.line, unseen.kinds]));
  return {
    sentences,
    thresholds: calibrated(
      unseenOf.filter(({ batch }) => isFullyLabelled(batch)).map(({ unseen }) => unseen),
    ),
    story: fitStory(batches),
    kinds: fitKinds(lines),
    cards: fitCards(batches, cardTexts),
    ...fitRoles(lines, (line) => kindsOf.get(line) ?? []),
  };
}

/** Every message read by weights made without its own batch. */
function unseenIn(batches: readonly Batch[]): readonly { readonly batch: Batch; readonly unseen: Unseen }[] {
  return Array.from({ length: FOLDS }, (_, fold) => fold).flatMap((fold) => {
    const isOut = ({ head: { batch } }: Batch): boolean => foldOf(batch, FOLDS) === fold;
    const packed = fitKinds(batches.filter((batch) => !isOut(batch)).flatMap(({ lines }) => lines));
    const vocabulary = vocabularyIn(packed.hashes);
    return batches
      .filter(isOut)
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
