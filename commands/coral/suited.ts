import { z } from 'zod';
import { basisName } from '../../core/corals/basis-words.ts';
import { corals, coralById } from '../../core/corals/coral-list.ts';
import type { Bases } from '../../core/corals/basis.ts';
import type { CoralEntry } from '../../core/corals/entry.ts';
import { flowWords } from '../../core/corals/rules/flow.ts';
import { cm } from '../../core/corals/say.ts';
import { nearMisses, suited } from '../../core/corals/suited.ts';
import { levels, suits, type Suits, type Wanted } from '../../core/corals/suits.ts';
import { answer, type Answer, type Fact, type NextAction } from '../answer.ts';
import { action } from '../calls.ts';
import { defineCommand } from '../command.ts';
import { quantityOption, textOption } from '../options.ts';
import { tellingName } from './asked-kind.ts';
import { askedWanted, type AskedWanted, type WantedInput } from './asked-wanted.ts';
import { coralsIn, MOST_OF_A_NAME, standingIn } from './corals-in.ts';
import { hazardCautions, hazardLines } from './hazard-lines.ts';
import { spreadingStep } from './spreading-step.ts';
import { tankOption } from './tank-input.ts';

/** So many are told in full, so many more by name, and so many that do not fit. */
const MOST_TOLD = 8;
const MOST_NAMED = 15;
const MOST_UNFIT = 4;

export const suitedCommand = defineCommand({
  path: ['coral', 'suited'],
  summary: 'Which corals fit a tank, a spot and your experience, and which you wish for do not',
  example: '/coral suited level:first year par:90 flow:low wish:torch, acropora',
  options: z.strictObject({
    level: z.enum(levels).describe('How long you have kept a reef').optional(),
    at: textOption('A spot in your tank: "left, back, low"').optional(),
    par: quantityOption('light', 'PAR at the spot, where you know it').optional(),
    flow: z.enum(['low', 'medium', 'high']).describe('Flow at the spot').optional(),
    ground: z.enum(['rock', 'sand']).describe('What it would stand on').optional(),
    kind: z
      .enum(['large-polyp', 'small-polyp', 'soft', 'zoanthid', 'mushroom', 'anemone'])
      .describe('Only corals of this kind')
      .optional(),
    wish: textOption('Corals you wish for: "torch, acan, goniopora"').optional(),
    beside: textOption('Corals that stand there already: "leather, zoas"').optional(),
    volume: quantityOption('volume', 'Water of a tank that is not kept here').optional(),
    tank: tankOption(),
  }),
  run: (input, context): Answer => suitedAnswer(input, askedWanted(input, { ...context, keep: undefined })),
  own: {
    when: ({ tank }, { hasTank }) => hasTank || tank !== undefined,
    run: (input, context): Answer => suitedAnswer(input, askedWanted(input, context)),
  },
});

function suitedAnswer(input: WantedInput & { wish?: string | undefined }, asked: AskedWanted): Answer {
  const standing = new Set(standingIn(input.beside).map(({ entry }) => entry));
  const fitting = suited(asked.wanted).filter(({ entry }) => !standing.has(entry));
  const told = fitting.slice(0, MOST_TOLD);
  const wished = wishes(input.wish, asked.wanted);
  const unfit = unfitting(input.wish, asked.wanted, fitting.length === 0);
  return answer({
    headline: `${wishWords(wished)}${headline(fitting, asked, wished.length > 0)}`,
    read: [...asked.read, ...unread(input.wish), 'tried as a small tank-grown piece, new today'],
    facts: [
      ...wished.map(suitsFact),
      ...told.filter(({ entry }) => !wished.some((one) => one.entry === entry)).map(suitsFact),
      ...moreFact(fitting.slice(MOST_TOLD)),
      ...unfit.map(suitsFact),
    ],
    steps: [
      'Take one or two, and leave them weeks before the next; place each with /coral add, which checks its spot.',
      spreadingStep([...wished.map(({ entry }) => entry), ...standing]) ??
        'Ask for tank-grown pieces: they settle more easily and leave the reef alone (common practice).',
    ],
    cautions: [...hazardCautions(hazardLines(told.map(({ entry }) => entry))), HONEST, ...asked.cautions],
    next: nextOf([...wished.filter(fits), ...told], input.at),
  });
}

const HONEST =
  'Fits means that nothing here speaks against it, not that it will live: water, care and the piece itself decide. Demanding ones are left out for less experience on purpose (project rule).';

function headline(fitting: readonly Suits[], { conditions, wanted }: AskedWanted, hasWish: boolean): string {
  const where = `(${conditions.join(', ')})`;
  const of = corals.filter(({ group }) => wanted.group === undefined || group === wanted.group).length;
  if (fitting.length === 0)
    return `None of the ${of} kinds I know fits${conditions.length === 0 ? '' : ` ${where}`}; the nearest misses are below.`;
  const first = fitting.slice(0, 3).map(({ entry }) => entry.names.common[0]);
  if (hasWish) return `Easy as well${conditions.length === 0 ? '' : ` ${where}`}: ${first.join(', ')}.`;
  if (conditions.length === 0)
    return `Nothing is said of light, spot or experience, so nearly all stay open; the easiest to begin with: ${first.join(', ')}.`;
  return `${fitting.length} of ${of} kinds fit ${where}: look first at ${first.join(', ')}.`;
}

/** What was wished for comes first: "Does not fit: Staghorn acropora. The others fit. " */
function wishWords(wished: readonly Suits[]): string {
  const unfit = wished.filter((one) => !fits(one));
  const fit = wished.filter(fits);
  if (fit.length <= MOST_WISHED) return listed('Does not fit', unfit) + listed('Fits', fit);
  return unfit.length === 0 ? 'All you name fit. ' : `${listed('Does not fit', unfit)}The others fit. `;
}

/** Of more that fit no names are told first; they are below. */
const MOST_WISHED = 2;

function listed(word: string, some: readonly Suits[]): string {
  if (some.length === 0) return '';
  const names = some.slice(0, MOST_OF_A_NAME).map(({ entry }) => entry.names.common[0]);
  return `${word}: ${names.join(', ')}${some.length > names.length ? ' and more' : ''}. `;
}

function fits({ against }: Suits): boolean {
  return against.length === 0;
}

/** Why it fits, with what its numbers rest on; or why it does not. */
function suitsFact(one: Suits): Fact {
  const { entry, against, watch } = one;
  const label = entry.names.common[0];
  if (!fits(one)) return { label, value: against.join('; '), verdict: 'does not fit' };
  const { light, sting, hardiness, photosynthetic } = entry;
  const bright = photosynthetic
    ? `${light.lowPpfd} to ${light.highPpfd} PAR, begins near ${light.startPpfd}`
    : 'lives by food';
  const words = `${hardiness.value}; ${bright}; ${flowWords(entry)} flow; ${cm(sting.keepClearCm)} clear (${basisName(...basesOf(entry))})`;
  return {
    label,
    value: watch.length === 0 ? words : `${words}. Mind: ${[...new Set(watch)].slice(0, 3).join('; ')}`,
    verdict: watch.length === 0 ? 'fits' : 'fits, with care',
  };
}

function basesOf({ light, flow, hardiness, sting }: CoralEntry): readonly Bases[] {
  return [hardiness.basis, light.basis, flow.basis, sting.keepClearBasis];
}

function moreFact(rest: readonly Suits[]): readonly Fact[] {
  if (rest.length === 0) return [];
  const names = rest.slice(0, MOST_NAMED).map(({ entry }) => entry.names.common[0]);
  const left = rest.length - names.length;
  return [
    { label: `${rest.length} more fit`, value: `${names.join(', ')}${left > 0 ? ` and ${left} more` : ''}` },
  ];
}

/** Corals named in the wish; a name of several is tried as each of the likeliest. */
function wishes(wish: string | undefined, wanted: Wanted): readonly Suits[] {
  if (wish === undefined) return [];
  const entries = coralsIn(wish).flatMap((named) => named.entries.slice(0, MOST_OF_A_NAME));
  return [...new Set(entries)].map((entry) => suits(entry, wanted));
}

/** What of the wish was not tried. */
function unread(wish: string | undefined): readonly string[] {
  if (wish === undefined) return [];
  const named = coralsIn(wish);
  if (named.length === 0) return [`I know no coral in "${wish}"`];
  return named
    .filter(({ entries }) => entries.length > MOST_OF_A_NAME)
    .map(
      ({ name, entries }) => `${name} can mean ${entries.length} kinds; ${MOST_OF_A_NAME} of them are tried`,
    );
}

/** What newcomers often ask for, from memory. */
const OFTEN = [
  'torch-coral',
  'acropora-staghorn',
  'goniopora',
  'bubble-tip-anemone',
  'elegance-coral',
  'scolymia-australis',
  'montipora-plating',
  'sun-coral',
  'galaxea',
  'carpet-anemone',
] as const;

/** What does not fit and is told: the nearest misses where nothing fits, else what is often wished for. */
function unfitting(wish: string | undefined, wanted: Wanted, none: boolean): readonly Suits[] {
  if (none) return nearMisses(wanted, MOST_UNFIT);
  return wish === undefined ? oftenWished(wanted) : [];
}

/** Those of them that do not fit. */
function oftenWished(wanted: Wanted): readonly Suits[] {
  return OFTEN.flatMap((id) => coralById(id) ?? [])
    .filter(({ group }) => wanted.group === undefined || group === wanted.group)
    .map((entry) => suits(entry, wanted))
    .filter((one) => !fits(one))
    .slice(0, MOST_UNFIT);
}

function nextOf(best: readonly Suits[], at: string | undefined): readonly NextAction[] {
  const entries = [...new Set(best.map(({ entry }) => entry))].slice(0, 3);
  return entries.flatMap((entry) => {
    const [coral, name] = [tellingName(entry), entry.names.common[0]];
    return [
      action(`About ${name}`, 'coral about', { coral }),
      ...(at === undefined ? [] : [action(`Place ${name} there`, 'coral add', { coral, at }, ['size'])]),
    ];
  });
}
