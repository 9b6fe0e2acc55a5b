import { integer, record, uniqueArray } from 'fast-check';
import type { Point } from '../../../core/trend/point.ts';

/** A line and points exactly on it, at three or more different times. */
export const exactLines = record({
  slope: integer({ min: -400, max: 400 }).map((n) => n / 16),
  level: integer({ min: -4000, max: 4000 }).map((n) => n / 8),
  days: uniqueArray(integer({ min: 0, max: 2000 }), { minLength: 3, maxLength: 40 }),
}).map(({ slope, level, days }) => ({
  slope,
  level,
  points: days.map((day): Point => ({ day, value: level + slope * day })),
}));

/** Points from values at days 1, 2, 3 ... */
export function daily(values: readonly number[]): Point[] {
  return values.map((value, index) => ({ day: index + 1, value }));
}
