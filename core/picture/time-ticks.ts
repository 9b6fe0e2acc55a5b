import { MS_PER_DAY } from '../trend/dated.ts';
import { tickText } from './dates.ts';

/** A mark on the time axis: wall time (see `wallMs`) and its label. */
export interface TimeTick {
  readonly wall: number;
  readonly text: string;
}

interface Step {
  readonly days: number;
  readonly months?: number;
}

const STEPS: readonly Step[] = [
  ...[1 / 24, 1 / 8, 1 / 4, 1 / 2, 1, 2, 7, 14].map((days) => ({ days })),
  ...[1, 2, 3, 6, 12, 24, 60, 120].map((months) => ({ days: months * 30.4375, months })),
];

/**
 * Round wall times from `from` to `to`, as many as stand clear of one another.
 *
 * @param roomFor whether labels fit when two marks are `days` apart
 */
export function timeTicks(
  from: number,
  to: number,
  roomFor: (texts: readonly string[], days: number) => boolean,
): readonly TimeTick[] {
  let ticks: readonly TimeTick[] = [];
  for (const { days, months } of STEPS) {
    if ((to - from) / MS_PER_DAY / days > 100) continue;
    const walls = months === undefined ? daySteps(from, to, days) : monthSteps(from, to, months);
    // A step too long for two marks says less than the crowded one before it.
    if (walls.length < 2 && ticks.length > 0) break;
    ticks = walls.map((wall) => ({ wall, text: tickText(wall, days) }));
    if (
      roomFor(
        ticks.map(({ text }) => text),
        days,
      )
    )
      return ticks;
  }
  const every = Math.ceil(ticks.length / 3);
  return ticks.filter((_, i) => i % every === 0);
}

/** From the first midnight on, or for parts of a day from the first whole part. */
function daySteps(from: number, to: number, days: number): number[] {
  const step = days * MS_PER_DAY;
  const align = Math.min(step, MS_PER_DAY);
  const first = Math.ceil(from / align) * align;
  return Array.from({ length: Math.max(0, Math.floor((to - first) / step) + 1) }, (_, i) => first + i * step);
}

function monthSteps(from: number, to: number, months: number): number[] {
  const start = new Date(from);
  const first = Math.floor(((start.getUTCFullYear() - 2000) * 12 + start.getUTCMonth()) / months) * months;
  const walls: number[] = [];
  for (let month = first; Date.UTC(2000, month) <= to; month += months) walls.push(Date.UTC(2000, month));
  return walls.filter((wall) => wall >= from);
}
