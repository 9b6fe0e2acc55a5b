import { Problem } from '../../core/problem.ts';
import { fromTo, fromUnit } from '../../core/quantity/format.ts';
import { readAlike, readQuantity, type Quantity } from '../../core/quantity/read.ts';
import { possible } from '../../core/water/possible.ts';
import { parameter, type ParameterId } from '../../core/water/parameter.ts';
import { asWritten, inOwnUnit, shown } from './asked.ts';
import { isBelievable, limitsOf } from '../../core/water/limits.ts';
import { say } from '../../core/wording/say.ts';

/** From where to where a parameter should go, canonical units. `now` is unknown where only a rise was asked. */
export interface Change {
  readonly now: number | undefined;
  readonly goal: number | undefined;
  readonly rise: number;
  /** "from 7.2 dKH to 8.4 dKH", or "by 1 dKH". */
  readonly words: string;
  readonly read: readonly string[];
}

/**
 * Reads `now` and `goal`, or a bare rise written "+1 dKH" in `goal`.
 *
 * @throws Problem when `now` is missing without a "+", or a text is no reading of that parameter.
 */
export function askedChange(id: ParameterId, now: string | undefined, goal: string): Change {
  const { kind, label, unit } = parameter(id);
  if (goal.startsWith('+')) {
    const by = readQuantity(kind, goal.slice(1), { field: 'goal', fallback: unit });
    possible(id, 'goal', inOwnUnit(id, by.value));
    if (now !== undefined) return risen(id, now, by);
    return {
      now: undefined,
      goal: undefined,
      rise: by.value,
      words: `up by ${shown(id, by.value)}`,
      read: [`${label} up by ${asWritten(id, by)}`, ...by.notes],
    };
  }
  if (now === undefined) {
    throw new Problem(say('dose.whatDoesReadNow', { label }), {
      field: 'now',
      hint: say('dose.orGiveOnlyRise', { unit }),
    });
  }
  const [from, to] = readAlike(
    kind,
    [
      { text: now, field: 'now' },
      { text: goal, field: 'goal' },
    ],
    {
      plausible: plausible(id),
    },
  );
  if (from === undefined || to === undefined) throw new Error('readAlike lost a reading');
  if (id === 'alkalinity') notTaken(now, from, to);
  possible(id, 'now', inOwnUnit(id, from.value));
  possible(id, 'goal', inOwnUnit(id, to.value));
  return {
    now: from.value,
    goal: to.value,
    rise: to.value - from.value,
    words: fromTo(shown(id, from.value), shown(id, to.value)),
    read: [
      `${label} now ${asWritten(id, from)}, goal ${asWritten(id, to)}`,
      ...new Set([...from.notes, ...to.notes]),
    ],
  };
}

/** A rise from a reading that is known: where it ends is known, too. */
function risen(id: ParameterId, now: string, by: Quantity): Change {
  const { kind, label, unit } = parameter(id);
  const from = readQuantity(kind, now, { field: 'now', fallback: unit, plausible: plausible(id) });
  const goal = from.value + by.value;
  possible(id, 'now', inOwnUnit(id, from.value));
  possible(id, 'goal', inOwnUnit(id, goal));
  return {
    now: from.value,
    goal,
    rise: by.value,
    words: fromTo(shown(id, from.value), shown(id, goal)),
    read: [`${label} now ${asWritten(id, from)}, up by ${asWritten(id, by)}`, ...from.notes, ...by.notes],
  };
}

/** dKH: below this a bare number is as well meq/L, where it would be a usual reading: 3.2 meq/L is 9 dKH. */
const MAY_BE_MEQ = 4.5;

/** "3.2, want 8": a dying tank in dKH, a good one in meq/L, so the unit is asked and not taken from the goal. */
function notTaken(given: string, from: Quantity, to: Quantity): void {
  const isBare = /^[\d.,\s]+$/.test(given);
  const isDoubtful = from.unit === 'dKH' && from.written <= MAY_BE_MEQ && to.written > MAY_BE_MEQ;
  if (!isBare || (!isDoubtful && from.unit === to.unit)) return;
  throw new Problem(say('dose.dkhOrMeq', { given: given.trim(), asMeq: shown('alkalinity', from.written) }), {
    field: 'now',
    given: given.trim(),
    choices: [`${given.trim()} dKH`, `${given.trim()} meq/L`],
  });
}

/** A reading is known to half of what the kit can tell apart: nearer to its goal than that it may be there already. */
export function withinKit(id: ParameterId, rise: number): boolean {
  return Math.abs(inOwnUnit(id, rise)) < (parameter(id).kitResolution / 2) * (1 - 1e-9);
}

/** Range a reading can be believed in, canonical units. */
export function plausible(id: ParameterId): readonly [number, number] {
  const { kind, unit } = parameter(id);
  const [low, high] = limitsOf(id).believable;
  return [fromUnit(kind, low, unit), fromUnit(kind, high, unit)];
}

/** Whether a rise alone (canonical) could lie between two believable readings. */
export function believableRise(id: ParameterId, rise: number): boolean {
  const [low, high] = limitsOf(id).believable;
  return inOwnUnit(id, rise) <= high - low;
}

/** Whether a reading (canonical) lies where it can be believed. */
export function believable(id: ParameterId, value: number): boolean {
  return isBelievable(id, inOwnUnit(id, value));
}
