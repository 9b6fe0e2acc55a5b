import type { UrgentId } from '../../core/care/urgent/cards.ts';
import { sideBeyond } from '../../core/care/urgent/side.ts';
import { readLogged, type ReadValue } from '../../core/log/value.ts';
import { limitsOf, type Side } from '../../core/water/limits.ts';
import type { ParameterId } from '../../core/water/parameter.ts';
import { say } from '../../core/wording/say.ts';
import { readWater, type Water } from '../waterchange/pour.ts';
import { notUsed, readOrName } from './not-used.ts';

/** The numbers a member or their tank gives for an emergency, as text. */
export interface UrgentInput {
  readonly of?: string | undefined;
  readonly now?: string | undefined;
  readonly goal?: string | undefined;
  readonly fresh?: string | undefined;
  readonly volume?: string | undefined;
  readonly temperature?: string | undefined;
  readonly salinity?: string | undefined;
}

/**
 * The same as numbers. What cannot be read or believed is absent here and named in `left`, so that no number takes the
 * first aid away.
 */
export interface Known {
  readonly water: Water;
  readonly temperature?: ReadValue | undefined;
  readonly salinity?: ReadValue | undefined;
  readonly now?: ReadValue | undefined;
  readonly goal?: ReadValue | undefined;
  readonly fresh?: ReadValue | undefined;
  readonly left: readonly string[];
  /** The volume, where none was given that can be read; a form can ask for it. */
  readonly missing: readonly (keyof UrgentInput)[];
}

/** What `now`, `goal` and `fresh` measure in each emergency that has a sum with them. */
export function measured(
  id: UrgentId,
  of: string | undefined,
): Readonly<Partial<Record<Level, ParameterId>>> {
  if (id === 'ammonia') return { now: 'ammonia' };
  if (id === 'salinity crash') return { goal: 'salinity' };
  if (id !== 'overdose') return {};
  const dosed = dosedOf(of);
  return { now: dosed, goal: dosed, fresh: dosed };
}

/** What can be dosed too much. */
export const overdosable = ['alkalinity', 'limewater', 'calcium', 'magnesium'] as const;
export type Overdosable = (typeof overdosable)[number];

/** Those of them that are measured. */
export const dosedLevels = ['alkalinity', 'calcium', 'magnesium'] as const satisfies readonly Overdosable[];

/** What shows it; limewater shows as alkalinity. */
export function dosedOf(of: string | undefined): (typeof dosedLevels)[number] {
  return of === 'calcium' || of === 'magnesium' ? of : 'alkalinity';
}

type Level = 'now' | 'goal' | 'fresh';
type Named = Level | 'temperature' | 'salinity';

/** An overdose reads above what a tank otherwise does, but not at so many times of it; own choice. */
const BEYOND_BELIEF = 2;

function isBeyondBelief(of: ParameterId, value: number): boolean {
  return (of === 'calcium' || of === 'magnesium') && value > BEYOND_BELIEF * limitsOf(of).believable[1];
}

/** Reads every number that was given, in this one place, and lets none of them speak against the card. */
export function knownFrom(id: UrgentId, input: UrgentInput): Known {
  const left: string[] = [];
  const level = (name: Named, of: ParameterId | undefined): ReadValue | undefined => {
    const text = input[name];
    if (text === undefined) return undefined;
    if (of === undefined) {
      left.push(notUsed(name, text, say('urgent.notNeeded')));
      return undefined;
    }
    const unread: string[] = [];
    const read = readOrName(name, text, (given) => readLogged(of, given, name), unread);
    const side =
      read === undefined || of === 'temperature' || isBeyondBelief(of, read.value)
        ? sideBeyond(of, text)
        : undefined;
    left.push(...(side === undefined ? unread : [notUsed(name, text, beyond(side))]));
    return side === undefined ? read : undefined;
  };
  const water = readOrName('volume', input.volume, readWater, left);
  const kinds = measured(id, input.of);
  return {
    water: water ?? readWater(undefined),
    temperature: level('temperature', 'temperature'),
    salinity: level('salinity', 'salinity'),
    now: level('now', kinds.now),
    goal: level('goal', kinds.goal),
    fresh: level('fresh', kinds.fresh),
    left,
    missing: water === undefined ? ['volume'] : [],
  };
}

function beyond(side: Side): string {
  return say('urgent.beyondBelief', { side });
}
