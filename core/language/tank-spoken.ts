import type { Case, Moment } from './case.ts';
import { fillSlots } from './fill-slots.ts';
import type { Reading } from './reading.ts';
import { inUnit, type Said } from './said.ts';
import type { Scanned } from './tokens.ts';

/** Words for one of several tanks. They are grammar: nothing is learnt of them. */
const SIZES: Readonly<Record<string, string>> = {
  big: 'big',
  bigger: 'big',
  large: 'big',
  main: 'big',
  display: 'display',
  small: 'small',
  smaller: 'small',
  little: 'small',
  frag: 'frag',
  nano: 'nano',
  pico: 'pico',
  cube: 'cube',
};
/** The same tank by another word: "the little one" is the frag tank where no other is small. */
const LIKE: readonly (readonly string[])[] = [
  ['big', 'display'],
  ['small', 'frag', 'nano', 'pico', 'cube'],
];
const GENERAL: ReadonlySet<string> = new Set(['big', 'small']);
const ALONE: ReadonlySet<string> = new Set(['display', 'nano', 'pico', 'cube']);
const TANK: ReadonlySet<string> = new Set(['tank', 'system', 'reef', 'aquarium']);
const TANKS: ReadonlySet<string> = new Set(['tanks', 'systems', 'reefs', 'aquariums', 'aquaria']);

/** One of several tanks spoken of, and where in the message. */
interface Spoken {
  readonly name: string;
  readonly start: number;
}

/** The tanks a message names, in order; "the big one" is a tank only where several were told of. */
export function tanksSpoken({ tokens }: Scanned, before: Case): readonly Spoken[] {
  const told = tanksOf(before);
  const isSeveral = tokens.some(({ word }) => TANKS.has(word)) || told.length > 0;
  const [, second, third] = told;
  const other = third === undefined ? second : undefined;
  return tokens.flatMap(({ word, start }, at) => {
    const size = SIZES[word];
    const next = tokens[at + 1];
    if (word === 'other' && next?.word === 'one' && other !== undefined) return [{ name: other, start }];
    if (size === undefined) return [];
    const isTank = ALONE.has(size) || TANK.has(next?.word ?? '') || (isSeveral && next?.word === 'one');
    const isListed = isSeveral && GENERAL.has(size) && next?.number !== undefined;
    return isTank || isListed ? [{ name: asTold(size, told), start }] : [];
  });
}

/** By the name the case has for it. */
function asTold(name: string, told: readonly string[]): string {
  if (told.includes(name)) return name;
  const like = told.filter((one) => LIKE.some((group) => group.includes(one) && group.includes(name)));
  const [only, more] = like;
  const isOne = only !== undefined && more === undefined && (GENERAL.has(name) || GENERAL.has(only));
  return isOne ? only : name;
}

/** The tanks a case tells of by name, the one spoken of last first. */
function tanksOf({ moments }: Case): readonly string[] {
  return [...new Set(moments.toReversed().flatMap(({ about }) => about ?? []))];
}

/** What is left of a message about another tank: that it was asked. */
const NOTHING: Moment['slots'] = {};

/** The case as it is true of the tank spoken of now, that named or else the one named last: no facts of the others. */
export function ofTankSpoken(before: Case, scanned: Scanned): Case {
  const name = tanksSpoken(scanned, before).at(-1)?.name ?? tanksOf(before)[0];
  if (name === undefined || scanned.tokens.some(({ word }) => word === 'both')) return before;
  const moments = before.moments.map((one) =>
    one.about === undefined || one.about === name ? one : { ...one, slots: NOTHING },
  );
  return { ...before, moments };
}

/** A case of one tank with what is known of the others again; `all` is the case it was made from. */
export function withOtherTanks(before: Case, all: Case): Case {
  const moments = before.moments.map((one, at) => (one.slots === NOTHING ? (all.moments[at] ?? one) : one));
  return { ...before, moments };
}

/** A message about several tanks as one moment each, with the numbers behind its name; of one, that moment is its. */
export function perTank(moment: Moment, { scanned, said }: Reading, before: Case): readonly Moment[] {
  const spoken = tanksSpoken(scanned, before);
  const [only] = spoken;
  if (only === undefined) return [moment];
  if (spoken.every(({ name }) => name === only.name)) return [{ ...moment, about: only.name }];
  const within = (from: number, to: number): Moment['slots'] =>
    fillSlots(
      { ...scanned, names: scanned.names.filter(({ start }) => start >= from && start < to) },
      inOneUnit(said).filter(({ number }) => number.start >= from && number.start < to),
    ).slots;
  const each = spoken.map(({ name, start }, at): Moment => {
    const slots = within(start, spoken[at + 1]?.start ?? scanned.text.length);
    return { atMs: moment.atMs, kind: 'told', slots, about: name };
  });
  return [...each, { ...moment, slots: within(0, only.start) }];
}

/** "the big one 180 litres, the small one 60": both are in litres. */
function inOneUnit(said: readonly Said[]): readonly Said[] {
  const unit = said.find(({ part, number }) => part === 'system' && number.kinds.includes('volume'))?.number
    .unit;
  return said.map((one) =>
    unit === undefined || one.part !== 'system' || one.number.kinds.length > 0
      ? one
      : inUnit(one, unit, ['volume']),
  );
}
