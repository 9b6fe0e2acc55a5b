import type { Found } from '../../core/care/symptoms/rank.ts';
import type { Sign } from '../../core/care/symptoms/sign.ts';
import { classesMet } from '../../core/language/beside.ts';
import { classesIn } from '../../core/language/lexicon/classes.ts';
import { isYoungSaid } from '../../core/language/age-said.ts';
import type { Met } from '../../core/language/met.ts';
import type { Scanned, Token } from '../../core/language/tokens.ts';

/** What a message tells as done, as a sign of what it sees, and the words it is told in. */
const DONE: readonly (readonly [Sign, string, readonly Met[]])[] = [
  [
    'fed',
    'food or amino acids',
    [
      'deeds.feeds',
      'substances.aminoAcids',
      'substances.coralFood',
      'substances.dryFood',
      'substances.frozenFood',
    ],
  ],
  ['dosed', 'something dosed', ['deeds.doses', 'events.fellIn']],
  [
    'handled',
    'a move, a dip or a cut',
    ['deeds.moves', 'records.moved', 'deeds.glues', 'deeds.frags', 'deeds.dips'],
  ],
];

/** Animals that a new one can be, besides any fish; pests and pets are named by other cards. */
const ANIMALS: ReadonlySet<string> = new Set([
  'animals.shrimp',
  'animals.aiptasiaEater',
  'animals.pistolShrimp',
  'animals.mantis',
  'animals.harlequinShrimp',
  'animals.crab',
  'animals.hermit',
  'animals.pestCrab',
  'animals.lobster',
  'animals.snail',
  'animals.predatorSnail',
  'animals.urchin',
  'animals.spinyUrchin',
  'animals.starfish',
  'animals.slug',
  'animals.seaHare',
]);
const NO_FISH: ReadonlySet<string> = new Set(['fish.parasite', 'fish.fishDisease', 'fish.fishOnly']);
const NEW = ['times.newAge', 'records.came', 'deeds.adds', 'deeds.buys'] as const;
const AT_IT = ['lives.nipped', 'lives.eaten'] as const;
const LAMPS = ['gear.lamp', 'gear.ledLamp', 'gear.halide', 'gear.fluorescent', 'places.bright'] as const;
const MORE = ['times.newAge', 'deeds.swaps', 'events.wentUp', 'manner.rise', 'deeds.setsUp'] as const;

/** What a message itself names that can be the cause: a new animal, food, a dose, a move, a lamp, shade that helps. */
export function saidSigns(scanned: Scanned): readonly Found[] {
  const parts = clausesOf(scanned);
  const clauses = parts.map(classesMet);
  const inOne = (first: (found: ReadonlySet<string>) => boolean, second: readonly string[]): boolean =>
    clauses.some((found) => first(found) && second.some((name) => found.has(name)));
  const isSand = inOne(
    (found) => found.has('places.sand'),
    ['deeds.moves', 'deeds.siphons', 'records.moved'],
  );
  const ofCorals = isSand ? parts.filter((tokens) => !classesMet(tokens).has('places.sand')) : parts;
  const isDone = (classes: readonly string[]): boolean => ofCorals.some((tokens) => isTold(tokens, classes));
  return [
    ...DONE.flatMap(([sign, words, classes]) => (isDone(classes) ? told(sign, words) : [])),
    ...(isSand ? told('sand stirred', 'sand that was moved') : []),
    ...(inOne(hasAnimal, NEW) ? told('new animal', 'a new animal') : []),
    ...(inOne(hasAnimal, AT_IT) ? told('animal at it', 'an animal at it') : []),
    ...(isYoungSaid(scanned) ? told('young tank', 'a young tank') : []),
    ...(inOne(hasLamp, MORE) ? told('new light', 'a change of light') : []),
    ...(inOne(hasLamp, ['events.holds']) ? told('light the same', 'the light is as it was') : []),
    ...(inOne((found) => found.has('places.shade'), ['lives.opens'])
      ? told('bright', 'those that open stand in the shade')
      : []),
  ];
}

/** Words before a deed that deny it stand no further off: "nobody's moved it". Own choice. */
const NEAR = 3;

/** Something told as done, and not denied. */
function isTold(tokens: readonly Token[], classes: readonly string[]): boolean {
  const found = classesIn(tokens.map(({ word }) => word));
  return found.some(
    (here, at) =>
      here.some((name) => classes.includes(name)) &&
      !found.slice(Math.max(0, at - NEAR), at).some((before) => before.includes('manner.negation')),
  );
}

function told(sign: Sign, words: string): readonly Found[] {
  return [{ sign, text: `you told of it: ${words}` }];
}

function hasLamp(found: ReadonlySet<string>): boolean {
  return LAMPS.some((name) => found.has(name));
}

function hasAnimal(found: ReadonlySet<string>): boolean {
  return [...found].some((name) => ANIMALS.has(name) || (name.startsWith('fish.') && !NO_FISH.has(name)));
}

const ENDS: ReadonlySet<string> = new Set(['.', '!', '?', ';', ',', ')', '(']);

function clausesOf({ tokens }: Scanned): readonly (readonly Token[])[] {
  const ends = tokens.flatMap(({ word }, at) => (ENDS.has(word) ? [at + 1] : []));
  return [...ends, tokens.length].map((end, at) => tokens.slice(ends[at - 1] ?? 0, end));
}
