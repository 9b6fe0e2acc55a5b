import type { Kind } from './kinds.ts';
import { met } from './met.ts';
import type { Level, Slots } from './slots.ts';
import type { Scanned } from './tokens.ts';
import { slotsOf } from './case.ts';

/**
 * Two levels follow from what is asked: "raise alk 7.2 to 8.2" says what it reads and what it should read, "alk 7.2 to 6.8
 * in two days, how much does it use" what it read and reads. Where the parts say otherwise they are put right; three levels,
 * or two in the other direction, are left as they are.
 */
export function asAsked(kind: Kind, slots: Slots, scanned: Scanned): Slots {
  const { of, levels = [] } = slots;
  const mine = levels.filter((level) => level.of === of);
  const [first, second, more] = mine;
  if (first === undefined || second === undefined || more !== undefined) return slots;
  const isUp = second.value > first.value;
  const isWish = wants(kind, isUp, scanned);
  if (isWish && first.part === 'was' && second.part === 'now')
    return withParts(slots, first, second, 'now', 'wanted');
  if (isPast(kind) && first.part === 'now' && second.part === 'wanted')
    return withParts(slots, first, second, 'was', 'now');
  return slots;
}

function wants(kind: Kind, isUp: boolean, scanned: Scanned): boolean {
  if (kind === 'dose-amount') return isUp;
  if (kind === 'change-goal') return !isUp;
  return kind === 'salinity-adjust' && met(scanned, isUp ? 'manner.rise' : 'manner.lower');
}

function isPast(kind: Kind): boolean {
  return kind === 'dose-use' || kind === 'moved';
}

function withParts(
  slots: Slots,
  first: Level,
  second: Level,
  one: Level['part'],
  other: Level['part'],
): Slots {
  const levels = (slots.levels ?? []).map((level) =>
    level === first ? { ...level, part: one } : level === second ? { ...level, part: other } : level,
  );
  const { was: _was, now: _now, wanted: _wanted, ...rest } = slots;
  return { ...rest, levels, ...slotsOf(levels, slots.of) };
}
