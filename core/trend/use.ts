import { withoutAdditions } from './daily-use.ts';
import { daysFrom, type DatedRise, type DatedValue, pointsFrom } from './dated.ts';
import { judgeTrend, type JudgedTrend } from './judge.ts';
import { theilSen } from './robust.ts';

/** How far back a use is worked out where nothing else is said, days: as far as a trend looks. Own choice. */
export const USE_DAYS = 90;
/** The newest readings that are looked at. */
export const MOST_READINGS = 400;
/** Readings closer together than this say nothing of a day's use: common practice, no source. */
const LEAST_DAYS = 0.5;

/** What a use is worked out from, all oldest first and in the parameter's own unit; readings that can be believed. */
export interface UseLog {
  readonly readings: readonly DatedValue[];
  readonly additions: readonly DatedRise[];
  /** What the kit can tell apart. */
  readonly resolution: number;
  /** Believable salinities of the same water with what an instrument can tell apart, for an ion that follows salinity. */
  readonly salinity?: { readonly readings: readonly DatedValue[]; readonly resolution: number } | undefined;
}

/** What the tank uses a day: negative where it rose by more than was added. */
export interface Use {
  readonly perDay: number;
  /** Holds `perDay`: 95 % by the scatter of the readings, and never narrower than the kit allows. */
  readonly low: number;
  readonly high: number;
  /** Whether the range leaves open that nothing is used. */
  readonly withinError: boolean;
  /** Whether the range comes from the kit's error alone. */
  readonly kitOnly: boolean;
  /** The slope it is read off: the readings as they would be had nothing been added. */
  readonly line: JudgedTrend;
  readonly days: number;
  readonly count: number;
  /** Rise that everything added from the first reading to before the last would have made alone, and how often. */
  readonly added: number;
  readonly additions: number;
  /** Salinity moved beyond its own error, and the readings were taken to one salinity. */
  readonly atOneSalinity: boolean;
}

/**
 * Use per day from all readings and everything added between them: what was added is known, so it is taken off each
 * later reading, and the use is the slope of what is left with its sign turned. The slope is the median of the slopes of
 * all pairs (robust.ts), so that one wrong reading hardly moves it, and its range is joined with the kit's error over
 * the whole time (judge.ts); for two readings this is (before - now + added) / days +- resolution / days.
 *
 * An ion that keeps its proportion to salinity (m08) rises and falls with it, which is no use: where the salinities show
 * a trend beyond their own error, each reading is taken to the salinity in the middle of that line.
 *
 * Check: 8 dKH on six days with 0.5 dKH added each day -> 0.5; 9.3, then 7.5 two days later -> 0.9, 0.75 to 1.05.
 * Doubt: a use that has changed meanwhile is a mean over the time; what is not logged counts as use.
 *
 * @returns undefined where no two readings are `leastDays` or more apart.
 */
export function useOf(
  { readings, additions, resolution, salinity }: UseLog,
  leastDays = LEAST_DAYS,
): Use | undefined {
  const [first, last] = [readings[0], readings.at(-1)];
  if (first === undefined || last === undefined) return undefined;
  const days = daysFrom(first.atMs, last.atMs);
  if (days < leastDays) return undefined;
  const scaled = toOneSalinity(readings, salinity);
  const bare = withoutAdditions(scaled ?? readings, additions);
  const slope = theilSen(pointsFrom(first.atMs, bare));
  if (slope === undefined) return undefined;
  const line = judgeTrend(slope, days, resolution);
  const between = additions.filter(({ atMs }) => atMs >= first.atMs && atMs < last.atMs);
  return {
    perDay: -line.perDay,
    low: -line.range.high,
    high: -line.range.low,
    withinError: line.verdict === 'within error',
    kitOnly: line.kitOnly,
    line,
    days,
    count: readings.length,
    added: between.reduce((sum, { rise }) => sum + rise, 0),
    additions: between.length,
    atOneSalinity: scaled !== undefined,
  };
}

/** Salinities a line may be read off at; beyond it would be a guess. */
const SALINITY = { min: 20, max: 42 } as const;

function toOneSalinity(
  readings: readonly DatedValue[],
  salinity: UseLog['salinity'],
): readonly DatedValue[] | undefined {
  const [first, last] = [salinity?.readings[0], salinity?.readings.at(-1)];
  if (salinity === undefined || first === undefined || last === undefined) return undefined;
  const days = daysFrom(first.atMs, last.atMs);
  const line = days < 1 ? undefined : theilSen(pointsFrom(first.atMs, salinity.readings));
  if (line === undefined || judgeTrend(line, days, salinity.resolution).verdict === 'within error')
    return undefined;
  const at = (atMs: number): number => {
    const day = Math.min(days, Math.max(0, daysFrom(first.atMs, atMs)));
    return Math.min(SALINITY.max, Math.max(SALINITY.min, line.at(day)));
  };
  const middle = at((first.atMs + last.atMs) / 2);
  return readings.map(({ atMs, value }) => ({ atMs, value: (value * middle) / at(atMs) }));
}
