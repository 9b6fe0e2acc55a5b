import { shownIn } from '../../core/log/value.ts';
import type { TrendPanel } from '../../core/picture/trend-data.ts';
import { suddenUse, type UseChange } from '../../core/trend/change.ts';
import { useBetween } from '../../core/trend/daily-use.ts';
import { daysFrom, pointsFrom, type DatedValue } from '../../core/trend/dated.ts';
import { leastSquares } from '../../core/trend/fit.ts';
import { daysToEdge, judgeTrend, type JudgedTrend } from '../../core/trend/judge.ts';
import { fastMoves } from '../../core/trend/pace.ts';
import type { Interval, TrendLine } from '../../core/trend/point.ts';
import { theilSen } from '../../core/trend/robust.ts';
import type { Use } from '../../core/trend/use.ts';
import { perFor, trendWords, type Per } from '../../core/trend/words.ts';
import { parameter, type ParameterId } from '../../core/water/parameter.ts';
import type { Addition, Reading, Tank } from '../keep.ts';
import { alertFor } from './alerts.ts';
import { rangesOf } from './ranges.ts';
import { isBelievable, limitsOf } from '../../core/water/limits.ts';

export type Method = TrendLine['method'];

/** Lines through the readings of one parameter, in the unit the tank's owner reads. */
export interface OneTrend {
  readonly id: ParameterId;
  readonly panel: TrendPanel;
  /** The sentence for the last move that was too fast. */
  readonly fast: string | undefined;
  readonly fastCount: number;
  readonly per: Per;
  readonly trend: JudgedTrend | undefined;
  /** What the tank uses a day of what growth takes up or what was added; the figure of /dose use, in the shown unit. */
  readonly use: Use | undefined;
  readonly change: UseChange | undefined;
  /** Readings nobody should believe before a second test, as numbers in the parameter's own unit. */
  readonly doubted: readonly number[];
  /** Days until the line leaves the target, soonest and latest by the range of its slope. */
  readonly edge: (Interval & { readonly value: number }) | undefined;
}

/** Fast moves the picture rings, the newest: more would hide the readings. */
export const MOST_RINGED = 12;

/** Readings of less than a day say how fast a value moved, not where it is going; own choice. */
const SHORTEST_DAYS = 1;

/** What growth takes up, so that its fall is a use. */
const CONSUMED: ReadonlySet<ParameterId> = new Set<ParameterId>([
  'alkalinity',
  'calcium',
  'magnesium',
  'strontium',
  'potassium',
  'iodine',
]);

/**
 * Trend, use and alerts of one parameter.
 *
 * @param logged at least one reading, oldest first, in the parameter's own unit
 */
export function oneTrend(
  tank: Tank,
  id: ParameterId,
  logged: readonly Reading[],
  added: readonly Addition[],
  used: Use | undefined,
  method: Method,
): OneTrend {
  const { label, kitResolution: ownResolution } = parameter(id);
  const { pace } = limitsOf(id);
  const shown = (value: number): number => shownIn(id, value, tank.units).value;
  const size = (change: number): number => shown(change) - shown(0);
  const { unit, decimals } = shownIn(id, 0, tank.units);
  const resolution = size(ownResolution);
  const readings = logged.map(({ atMs, value }) => ({ atMs, value: shown(value) }));
  const additions = added.map(({ atMs, rise }) => ({ atMs, rise: size(rise) }));
  const [low, high] = rangesOf(tank)(id);
  const target: readonly [number, number] = [shown(low), shown(high)];

  const days = daysFrom(logged[0]?.atMs ?? 0, logged.at(-1)?.atMs ?? 0);
  const per = perFor(days);
  const line = days < SHORTEST_DAYS ? undefined : lineOf(readings, method);
  const trend = line && judgeTrend(line, days, resolution);
  const believed = logged.filter(({ value }) => isBelievable(id, value));
  const moves = pace === undefined ? [] : fastMoves(believed, pace, ownResolution);
  const last = moves.at(-1)?.to;
  const earlier = believed.slice(
    0,
    believed.findIndex((reading) => reading === last),
  );
  const alert = last && alertFor({ parameter: id, value: last.value }, last.atMs, earlier, tank);
  const uses = useBetween(
    believed.map(({ atMs, value }) => ({ atMs, value: shown(value) })),
    additions,
    resolution,
  );
  return {
    id,
    panel: {
      label: label === 'pH' ? label : label.charAt(0).toUpperCase() + label.slice(1),
      unit,
      decimals,
      resolution,
      readings,
      additions,
      target,
      trend: line && trend && { line, words: trendWords(trend, per, '') },
      ringedMs: moves.slice(-MOST_RINGED).map(({ to }) => to.atMs),
      alerts: [],
    },
    fast: alert,
    fastCount: moves.length,
    per,
    trend,
    use: used !== undefined && (CONSUMED.has(id) || used.additions > 0) ? scaled(used, size) : undefined,
    change: CONSUMED.has(id) ? suddenUse(uses, resolution) : undefined,
    doubted: logged.flatMap(({ value }) => (isBelievable(id, value) ? [] : [value])),
    edge: line && trend && edgeOf([line.at(days), readings.at(-1)?.value ?? Number.NaN], trend, target),
  };
}

/** A use in another unit of the same kind. */
function scaled(use: Use, size: (change: number) => number): Use {
  const { perDay, low, high, added, line } = use;
  const range = { low: size(line.range.low), high: size(line.range.high) };
  return {
    ...use,
    perDay: size(perDay),
    low: size(low),
    high: size(high),
    added: size(added),
    line: { ...line, perDay: size(line.perDay), range },
  };
}

function lineOf(values: readonly DatedValue[], method: Method): TrendLine | undefined {
  const points = pointsFrom(values[0]?.atMs ?? 0, values);
  return method === 'robust' ? theilSen(points) : leastSquares(points);
}

/** Only where there is a trend (its range leaves zero out, so both ends are reached) and line and reading are inside. */
function edgeOf(
  [value, latest]: readonly [number, number],
  { perDay, range, verdict }: JudgedTrend,
  [low, high]: readonly [number, number],
): OneTrend['edge'] {
  const isInside = latest >= low && latest <= high;
  const ends = [range.low, range.high].map((slope) => daysToEdge(value, slope, { low, high }));
  const [one, other] = ends;
  if (verdict === 'within error' || !isInside || one === undefined || other === undefined) return undefined;
  return { low: Math.min(one, other), high: Math.max(one, other), value: perDay > 0 ? high : low };
}
