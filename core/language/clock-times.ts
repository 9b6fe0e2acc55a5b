import { metBefore } from './met.ts';
import type { Said } from './said.ts';
import type { Scanned } from './tokens.ts';

/** Hours of a clock face. */
const HOURS = 12;

/**
 * "I gave the alkalinity at 7, and at 8 he gave it again": a whole number behind "at" that is of a deed, beside another one
 * that was read as a time, is a time as well, and no level.
 */
export function withClockTimes(scanned: Scanned, said: readonly Said[]): readonly Said[] {
  const hours = said.filter((one) => isHour(scanned, one));
  if (!hours.some(({ part }) => part === 'moment')) return said;
  return said.map((one) =>
    hours.includes(one) && metBefore(scanned, one.number.start, 'parts.dosed')
      ? { ...one, part: 'moment', of: 'nothing' }
      : one,
  );
}

function isHour({ text }: Scanned, { number }: Said): boolean {
  const { value, start, kinds } = number;
  const isWhole = Number.isInteger(value) && value >= 1 && value <= HOURS && kinds.length === 0;
  return isWhole && /\bat\s+$/.test(text.slice(Math.max(0, start - 6), start));
}
