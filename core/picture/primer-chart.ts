import { line } from 'd3-shape';
import { palette } from './palette.ts';
import { framed, label, LEFT, RIGHT, rule, WIDTH, type PrimerPicture } from './primer-frame.ts';
import { tag } from './svg.ts';

export interface Curve {
  readonly name: string;
  readonly points: readonly (readonly [x: number, y: number])[];
  readonly colour: string;
  readonly dash?: string;
  /** Where its name stands, in chart values. */
  readonly at: readonly [x: number, y: number];
}

export interface Chart {
  readonly title: string;
  readonly alt: string;
  readonly xName: string;
  readonly yName: string;
  readonly x: readonly [number, number];
  readonly y: readonly [number, number];
  readonly xTicks: readonly number[];
  /** Left out where heights are only a sketch. */
  readonly yTicks: readonly number[];
  readonly band?: readonly [low: number, high: number];
  readonly curves: readonly Curve[];
  /** Staircase instead of slopes. */
  readonly steps?: boolean;
}

const TOP = 96;
const BOTTOM = 376;
const HEIGHT = 452;

/** Curves over one pair of axes; each is told apart by its dash and its name as well as its colour. */
export function chart(given: Chart): PrimerPicture {
  const { x: across, y: up, curves } = given;
  const left = given.yTicks.length === 0 ? LEFT + 8 : 86;
  const x = (value: number): number =>
    left + ((value - across[0]) / (across[1] - across[0])) * (RIGHT - 12 - left);
  const y = (value: number): number => BOTTOM - ((value - up[0]) / (up[1] - up[0])) * (BOTTOM - TOP);
  const band =
    given.band === undefined
      ? ''
      : tag('rect', {
          x: left,
          y: y(given.band[1]),
          width: RIGHT - 12 - left,
          height: y(given.band[0]) - y(given.band[1]),
          fill: palette.target,
        });
  return {
    svg: framed(
      given.title,
      HEIGHT,
      label(given.yName, { x: LEFT, y: 78, fill: palette.quietInk }),
      band,
      ...given.yTicks.flatMap((tick) => [
        rule(left, y(tick), RIGHT - 12, y(tick), palette.grid),
        label(String(tick), { x: left - 10, y: y(tick) + 8, anchor: 'end' }),
      ]),
      ...given.xTicks.flatMap((tick) => [
        rule(x(tick), BOTTOM, x(tick), BOTTOM + 8, palette.ink),
        label(String(tick), { x: x(tick), y: BOTTOM + 32, anchor: 'middle' }),
      ]),
      rule(left, BOTTOM, RIGHT - 12, BOTTOM, palette.ink),
      rule(left, TOP, left, BOTTOM, palette.ink),
      label(given.xName, {
        x: (left + WIDTH - 24) / 2,
        y: BOTTOM + 62,
        anchor: 'middle',
        fill: palette.quietInk,
      }),
      ...curves.map((curve) => drawn(curve, x, y, given.steps === true)),
    ),
    alt: given.alt,
  };
}

function drawn(
  curve: Curve,
  x: (value: number) => number,
  y: (value: number) => number,
  steps: boolean,
): string {
  const points = steps
    ? curve.points.flatMap(([at, value], index) => {
        const before = curve.points[index - 1];
        return before === undefined
          ? [[at, value] as const]
          : [[at, before[1]] as const, [at, value] as const];
      })
    : curve.points;
  const d = line<readonly [number, number]>(
    (point) => x(point[0]),
    (point) => y(point[1]),
  ).digits(1)(points);
  return (
    tag('path', {
      d: d ?? '',
      fill: 'none',
      stroke: curve.colour,
      'stroke-width': 5,
      ...(curve.dash === undefined ? {} : { 'stroke-dasharray': curve.dash }),
    }) + label(curve.name, { x: x(curve.at[0]), y: y(curve.at[1]), fill: curve.colour })
  );
}
