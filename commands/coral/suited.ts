import { z } from 'zod';
import { corals, coralById } from '../../core/corals/coral-list.ts';
import type { CoralEntry } from '../../core/corals/entry.ts';
import { fewOf, fittingOf } from '../../core/corals/say.ts';
import { nearMisses, suited } from '../../core/corals/suited.ts';
import { levels, suits, type Suits, type Wanted } from '../../core/corals/suits.ts';
import { say } from '../../core/wording/say.ts';
import { answer, type Answer, type NextAction } from '../answer.ts';
import { action } from '../calls.ts';
import { defineCommand } from '../command.ts';
import { quantityOption, textOption } from '../options.ts';
import { fittingHeadline } from '../fitting.ts';
import { tellingName } from './asked-kind.ts';
import { askedWanted, type AskedWanted, type WantedInput } from './asked-wanted.ts';
import { coralsIn, MOST_OF_A_NAME, standingIn } from './corals-in.ts';
import { peopleCautions, peopleDangers } from './people-dangers.ts';
import { spreadingStep } from './spreading-step.ts';
import { careLine, fits, suitsFact } from './suits-lines.ts';
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
    headline: withWhere(wished.length > 0 ? wishWords(wished) : headline(fitting, asked), asked.conditions),
    read: [
      ...asked.conditions,
      ...asked.read,
      ...unread(input.wish),
      'tried as a small tank-grown piece, new today',
    ],
    facts: [
      ...wished.map(suitsFact),
      ...told.filter(({ entry }) => !wished.some((one) => one.entry === entry)).map(suitsFact),
      ...unfit.map(suitsFact),
    ],
    isList: true,
    steps: [
      'Take one or two, and leave them weeks before the next. /coral add checks the spot of each.',
      spreadingStep([...wished.map(({ entry }) => entry), ...standing]) ??
        'Ask for tank-grown pieces: they settle more easily and leave the reef alone (common practice).',
    ],
    working: [...[...wished, ...told].filter(fits).map(careLine), ...moreLine(fitting.slice(MOST_TOLD))],
    dangers: peopleDangers(told.map(labelled)),
    cautions: [...peopleCautions(told.map(labelled)), HONEST, ...asked.cautions],
    next: nextOf([...wished.filter(fits), ...told], input.at),
  });
}

const HONEST =
  'Fits means that nothing here speaks against it, not that it will live: water, care and the piece itself decide. Demanding ones are left out for less experience on purpose (project rule).';

function headline(fitting: readonly Suits[], { conditions, wanted }: AskedWanted): string {
  const of = corals.filter(({ group }) => wanted.group === undefined || group === wanted.group).length;
  if (fitting.length === 0)
    return `None of the ${of} kinds I know fits${WHERE}; the nearest misses are below.`;
  const first = fitting.slice(0, 3).map(({ entry }) => entry.names.common[0]);
  if (conditions.length === 0)
    return `Nothing is said of light, spot or experience, so most stay open. Easiest: ${first.slice(0, 2).join(', ')}.`;
  return `${fitting.length} of ${of} kinds fit${WHERE}: look first at ${first.join(', ')}.`;
}

/** Where the conditions stand in a headline that has room for them. */
const WHERE = '{where}';

/** What was asked for in brackets, where the line has room for it. */
function withWhere(line: string, conditions: readonly string[]): string {
  const where = conditions.length === 0 ? '' : ` (${conditions.join(', ')})`;
  return fittingHeadline(line.replace(WHERE, where), line.replace(WHERE, ''));
}

/** What was wished for comes first: "Does not fit: Staghorn acropora. The others fit." */
function wishWords(wished: readonly Suits[]): string {
  const unfit = wished.filter((one) => !fits(one));
  const fit = wished.filter(fits);
  if (unfit.length === 0 && fit.length > MOST_WISHED) return `All you name fit${WHERE}.`;
  const others = fit.length > MOST_WISHED ? ['The others fit'] : listed('Fits', fit);
  return `${[...listed('Does not fit', unfit), ...others].join('. ')}${WHERE}.`;
}

/** Of more that fit no names are told first; they are below. */
const MOST_WISHED = 2;

/** So many letters of names in a list of the headline. */
const LISTED_LETTERS = 50;

function listed(word: string, some: readonly Suits[]): readonly string[] {
  if (some.length === 0) return [];
  const names = some.map(({ entry }) => entry.names.common[0]);
  return [`${word}: ${fittingOf(names, LISTED_LETTERS)}`];
}

function labelled({ entry }: Suits): { readonly entry: CoralEntry; readonly label: string } {
  return { entry, label: entry.names.common[0] };
}

function moreLine(rest: readonly Suits[]): readonly string[] {
  if (rest.length === 0) return [];
  const names = rest.map(({ entry }) => entry.names.common[0]);
  return [`${rest.length} more fit: ${fewOf(names, MOST_NAMED)}`];
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
      action(say('coral.about', { coral: name }), 'coral about', { coral }),
      ...(at === undefined
        ? []
        : [action(say('coral.placeThere', { coral: name }), 'coral add', { coral, at }, ['size'])]),
    ];
  });
}
