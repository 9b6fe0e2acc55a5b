import { inRange, Problem } from '../../core/problem.ts';
import type { SentenceKey } from '../../core/wording/language.ts';
import { isZone } from '../../core/schedule/zone.ts';
import { say } from '../../core/wording/say.ts';

/** Readings one member may keep: ten parameters a day for 50 years. */
export const MOST_READINGS = 200_000;
/** Additions one member may keep. */
export const MOST_ADDITIONS = 50_000;
export const MOST_BASIS_LETTERS = 200;
export const MOST_NOTE_LETTERS = 500;
export const MOST_COMPOUND_LETTERS = 80;

const EARLIEST_MS = Date.UTC(1970, 0);
const LATEST_MS = Date.UTC(2200, 0);
/** Beyond any value of any parameter; what is believable is asked before. */
const MOST_VALUE = 1e6;
/** Of a tank, or of what stands in it. */
const MOST_CM = 3000;
const LEAST_CM = 0.1;

/** @throws Problem when `text` is longer than `most` letters. */
export function shortEnough(field: string, text: string, most: number): string {
  if (text.length <= most) return text;
  throw new Problem(say('log.fieldTooLong', { field }), { field, limit: say('log.atMostLetters', { most }) });
}

/** @throws Problem, the sentence `full`, when there would be more than `most`. */
export function roomFor(
  field: string,
  count: number,
  most: number,
  full: Extract<SentenceKey, `log.roomFor${string}`>,
): void {
  if (count <= most) return;
  const shown = most.toLocaleString('en-GB');
  throw new Problem(say(full, { most: shown }), {
    field,
    limit: say('convert.atMost', { most: shown }),
    hint: say('log.hintRemoveSome'),
  });
}

/** Whole milliseconds of an instant between 1970 and 2200. */
export function instant(atMs: number): number {
  return Math.round(inRange('at', atMs, EARLIEST_MS, LATEST_MS, 'ms since 1970'));
}

export function sensible(field: string, value: number, unit: string): number {
  return inRange(field, value, -MOST_VALUE, MOST_VALUE, unit);
}

/** A length inside a tank, cm; more than nothing unless `leastCm` is 0. */
export function length(field: string, cm: number, leastCm = LEAST_CM): number {
  return inRange(field, cm, leastCm, MOST_CM, 'cm');
}

/** @throws Problem when it is no day of the calendar as YYYY-MM-DD. */
export function isoDate(field: string, text: string): string {
  const day = new Date(`${text}T00:00:00Z`);
  if (/^\d{4}-\d\d-\d\d$/.test(text) && !Number.isNaN(day.valueOf()) && day.toISOString().startsWith(text))
    return text;
  throw new Problem(say('log.noDate'), { field, given: text, limit: say('log.limitDate') });
}

/** @throws Problem when it is no IANA zone that reminders can be kept in. */
export function zoneName(zone: string): string {
  if (isZone(zone)) return zone;
  throw new Problem(say('schedule.unknownZone'), {
    field: 'zone',
    given: zone,
    limit: say('schedule.limitZone'),
  });
}
