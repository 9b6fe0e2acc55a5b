import { Problem } from '../problem.ts';
import { fixed } from '../quantity/format.ts';
import { say } from '../wording/say.ts';

/** A kind of reading, for the sentence shown when it is out of range: `field`, digits after the point, `unit`. */
export interface ReadingKind {
  readonly field: string;
  readonly digits: number;
  readonly unit: string;
}

/**
 * Checks a reading against limits that are themselves computed (the reading at the lowest and highest salinity of a
 * formula). The limits are compared unrounded and shown rounded inwards, so that every shown limit is accepted.
 *
 * @throws Problem naming the field and the shown limits.
 */
export function readingInRange(kind: ReadingKind, reading: number, min: number, max: number): number {
  if (Number.isFinite(reading) && reading >= min && reading <= max) return reading;
  const scale = 10 ** kind.digits;
  const shownMin = (Math.ceil(min * scale) / scale).toFixed(kind.digits);
  const shownMax = (Math.floor(max * scale) / scale).toFixed(kind.digits);
  const limit = say('convert.fromTo', { low: shownMin, high: `${shownMax} ${kind.unit}`.trim() });
  const given = `${fixed(reading, kind.digits + 1)} ${kind.unit}`.trim();
  throw new Problem(say('convert.outside', { field: kind.field, limit }), {
    field: kind.field,
    given,
    limit,
  });
}
