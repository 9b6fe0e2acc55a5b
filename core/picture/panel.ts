import type { ScaleTime } from 'd3-scale';
import { area, line } from 'd3-shape';
import { fixed } from '../quantity/format.ts';
import { MS_PER_DAY } from '../trend/dated.ts';
import { dayText } from './dates.ts';
import { palette } from './palette.ts';
import { cutTo, tag, words } from './svg.ts';
import type { TimeTick } from './time-ticks.ts';
import type { TrendPanel } from './trend-data.ts';
import { valueScale, type ValueScale } from './value-scale.ts';

/** Where a panel goes, in picture units, and the instants the grid stands at. */
export interface Place {
  readonly index: number;
  readonly ticks: readonly TimeTick[];
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly plotHeight: number;
  /** Wall time of an instant. */
  readonly wall: (atMs: number) => number;
}

/** Room for a panel's three lines of words. */
const HEADER = 116;
const LABEL = 30;
export const WORDS = 24;
/** Beyond this many readings the trend is drawn over them. */
const CROWDED = 60;

/** Height a panel takes: words, plot, and room for additions under it. */
export function panelHeight({ additions }: TrendPanel, plotHeight: number): number {
  return HEADER + plotHeight + (additions.length === 0 ? 12 : 34);
}

/** One parameter: words, target, grid, range of the trend, trend, readings, additions. */
export function drawPanel(panel: TrendPanel, x: ScaleTime<number, number>, place: Place): string {
  const top = place.top + HEADER;
  const bottom = top + place.plotHeight;
  const scale = valueScale(panel, top, bottom);
  const at = (ms: number): number => x(place.wall(ms));
  const clip = `plot${place.index}`;
  const frame = { x: place.left, y: top, width: place.right - place.left, height: place.plotHeight };
  const trend = tag('g', { 'clip-path': `url(#${clip})` }, trendMarks(panel, at, scale));
  const readings = readingMarks(panel, at, scale);
  return [
    header(panel, place, scale),
    tag('clipPath', { id: clip }, tag('rect', frame)),
    tag('g', { 'clip-path': `url(#${clip})` }, targetBand(panel, place, scale)),
    grid(x, place, scale, top, bottom),
    tag('rect', { ...frame, fill: 'none', stroke: palette.frame, 'stroke-width': 2 }),
    ...(panel.readings.length > CROWDED ? [readings, trend] : [trend, readings]),
    additionMarks(panel, at, bottom),
  ].join('');
}

function header(panel: TrendPanel, place: Place, scale: ValueScale): string {
  const { label, unit, decimals, readings, target, trend } = panel;
  const latest = readings.at(-1);
  const last =
    latest === undefined
      ? ''
      : `latest ${fixed(latest.value, decimals)} on ${dayText(place.wall(latest.atMs))}`;
  const aside = scale.targetAside === undefined ? '' : `, ${scale.targetAside} this`;
  const aim = target === undefined ? '' : `target ${aimText(target, decimals)}${aside}`;
  const name = unit === '' ? label : `${label}, ${unit}`;
  const left = 24;
  const lines = [place.top + 34, place.top + 68, place.top + 100] as const;
  const room = place.right - left;
  const [ink, quiet] = [palette.ink, palette.quietInk];
  const end = { x: place.right, size: WORDS, anchor: 'end' } as const;
  return [
    words(cutTo(room, name, LABEL), { x: left, y: lines[0], size: LABEL, fill: ink }),
    words(last, { x: left, y: lines[1], size: WORDS, fill: ink }),
    words(aim, { ...end, y: lines[1], fill: quiet }),
    words(cutTo(room, trend?.words ?? 'no trend yet', WORDS), {
      x: left,
      y: lines[2],
      size: WORDS,
      fill: quiet,
    }),
  ].join('');
}

/** "7 to 9", or one number where both ends are the same. */
export function aimText([low, high]: readonly [number, number], decimals: number): string {
  return low === high ? fixed(low, decimals) : `${fixed(low, decimals)} to ${fixed(high, decimals)}`;
}

function targetBand({ target }: TrendPanel, place: Place, { y }: ValueScale): string {
  if (target === undefined) return '';
  const [low, high] = [y(target[0]), y(target[1])];
  const span = { x: place.left, width: place.right - place.left };
  const edge = { x1: place.left, x2: place.right, stroke: palette.targetEdge, 'stroke-width': 2.5 };
  return [
    tag('rect', { ...span, y: high, height: low - high, fill: palette.target }),
    ...[low, high].map((height) => tag('line', { ...edge, y1: height, y2: height })),
  ].join('');
}

function grid(
  x: ScaleTime<number, number>,
  place: Place,
  { y, ticks }: ValueScale,
  top: number,
  bottom: number,
): string {
  const thin = { stroke: palette.frame, 'stroke-width': 1, 'stroke-opacity': 0.45 };
  return [
    ...place.ticks.map(({ wall }) => tag('line', { x1: x(wall), x2: x(wall), y1: top, y2: bottom, ...thin })),
    ...ticks.map(({ value }) =>
      tag('line', { x1: place.left, x2: place.right, y1: y(value), y2: y(value), ...thin }),
    ),
    ...ticks.map(({ value, text }) =>
      words(text, { x: place.left - 10, y: y(value) + 9, size: WORDS, fill: palette.ink, anchor: 'end' }),
    ),
  ].join('');
}

/** The trend's 95 % range, hatched with dotted edges, and its line, dashed. */
function trendMarks({ readings, trend }: TrendPanel, at: (ms: number) => number, { y }: ValueScale): string {
  const [first, last] = [readings[0], readings.at(-1)];
  if (trend === undefined || first === undefined || last === undefined) return '';
  const days = (last.atMs - first.atMs) / MS_PER_DAY;
  const steps = Array.from({ length: 41 }, (_, i) => (days * i) / 40);
  const atDay = (day: number): number => at(first.atMs + day * MS_PER_DAY);
  const range = area<number>(
    atDay,
    (day) => y(trend.line.bandAt(day)?.low ?? 0),
    (day) => y(trend.line.bandAt(day)?.high ?? 0),
  ).digits(1)(steps);
  const band = trend.line.slope === undefined ? null : range;
  const edge = { stroke: palette.trend, 'stroke-width': 2, 'stroke-dasharray': '2 6' };
  const middle = line<number>(atDay, (day) => y(trend.line.at(day))).digits(1)([0, days]);
  const halo = { fill: 'none', stroke: palette.ground, 'stroke-width': 9, 'stroke-opacity': 0.85 };
  const dash = { fill: 'none', stroke: palette.trend, 'stroke-width': 5, 'stroke-dasharray': '18 9' };
  return [
    band === null ? '' : tag('path', { d: band, fill: 'url(#range)', ...edge }),
    middle === null || readings.length <= CROWDED ? '' : tag('path', { d: middle, ...halo }),
    middle === null ? '' : tag('path', { d: middle, ...dash }),
  ].join('');
}

function readingMarks(panel: TrendPanel, at: (ms: number) => number, { y }: ValueScale): string {
  const { readings } = panel;
  const path = line<(typeof readings)[number]>(
    ({ atMs }) => at(atMs),
    ({ value }) => y(value),
  ).digits(1)(readings);
  const r = readings.length > 150 ? 3.5 : readings.length > CROWDED ? 5 : 8;
  const ringed = new Set(panel.ringedMs);
  const ring = { r: r + 8, fill: 'none', stroke: palette.alert, 'stroke-width': 4 };
  return [
    path === null
      ? ''
      : tag('path', {
          d: path,
          fill: 'none',
          stroke: palette.reading,
          'stroke-width': readings.length > CROWDED ? 1.5 : 2.5,
        }),
    ...readings.map(({ atMs, value }) => {
      const centre = { cx: at(atMs), cy: y(value) };
      const dot = tag('circle', { ...centre, r, fill: palette.reading });
      return ringed.has(atMs) ? dot + tag('circle', { ...centre, ...ring }) : dot;
    }),
  ].join('');
}

function additionMarks({ additions }: TrendPanel, at: (ms: number) => number, bottom: number): string {
  const half = Math.min(10, Math.max(2, 300 / additions.length));
  return additions.map(({ atMs }) => additionMark(at(atMs), bottom + 6, half)).join('');
}

/** A triangle that points up at `x`, its tip at `y`. */
export function additionMark(x: number, y: number, half: number): string {
  const points = [`${round(x)},${y}`, `${round(x - half)},${y + 19}`, `${round(x + half)},${y + 19}`];
  return tag('polygon', { points: points.join(' '), fill: palette.addition });
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}
