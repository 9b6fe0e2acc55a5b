import type { Point } from './point.ts';

export const MS_PER_DAY = 86_400_000;

/** A logged value, in the parameter's own unit, at an instant. */
export interface DatedValue {
  readonly atMs: number;
  readonly value: number;
}

/** Something added at an instant, by the rise it makes on its own in the parameter's own unit. */
export interface DatedRise {
  readonly atMs: number;
  readonly rise: number;
}

/** Days from one instant to another. */
export function daysFrom(fromMs: number, toMs: number): number {
  return (toMs - fromMs) / MS_PER_DAY;
}

/** Dated values as points in days since `originMs`. */
export function pointsFrom(originMs: number, values: readonly DatedValue[]): Point[] {
  return values.map(({ atMs, value }) => ({ day: daysFrom(originMs, atMs), value }));
}
