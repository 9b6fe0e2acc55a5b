import { contours } from 'd3-contour';
import { scaleLinear } from 'd3-scale';
import { HEIGHT_STRETCH, lightAt, READING_RADIUS_CM } from '../corals/par-field.ts';
import type { Box, LightPoint, Spot } from '../corals/scene.ts';
import type { View } from './tank-map-view.ts';

/** A line of equal light: its PAR and its spots in the plane of the slice. */
export interface LightLine {
  readonly ppfd: number;
  readonly spots: readonly Spot[];
}

/** One level cut of the tank's light (from above) or one upright cut (from the front). */
export interface LightSlice {
  /** How far up, or how far from the front, the cut lies, cm. */
  readonly atCm: number;
  readonly lines: readonly LightLine[];
}

/** Lines are drawn no further than this from a reading, cm: there the mean of the few in reach jumps. Project rule. */
const NEAR_CM = (2 / 3) * READING_RADIUS_CM;
/** About so many points are worked out for a slice; fewer, but no less than `LEAST_CELLS`, where many readings are near. */
const MOST_CELLS = 420;
const LEAST_CELLS = 200;

/**
 * Lines of equal light in the cut that has the most readings near: marching squares over `lightAt` on a grid. Where no
 * reading is near there is no line, and none is drawn along the border of what is known.
 */
export function lightSlice(
  light: readonly LightPoint[],
  box: Box,
  side: View['side'],
): LightSlice | undefined {
  const away = side === 'above' ? levelAway : uprightAway;
  const current = newest(light);
  const best = busiest(current, away);
  if (best === undefined) return undefined;
  const near = current.filter((point) => away(point, best) <= READING_RADIUS_CM);
  const grid = gridOver(box, side, best, Math.max(LEAST_CELLS, Math.min(MOST_CELLS, 40_000 / near.length)));
  const nearColumn = Array.from({ length: grid.columns }, (_, column) =>
    near.filter(({ xCm }) => Math.abs(xCm - grid.spotAt(column, 0).xCm) <= READING_RADIUS_CM),
  );
  const values = grid.spots.map((spot, i) => {
    const here = lightAt(nearColumn[i % grid.columns] ?? [], spot);
    return here === undefined || here.nearestCm > NEAR_CM ? Number.NaN : here.ppfd;
  });
  return { atCm: side === 'above' ? best.zCm : best.yCm, lines: linesIn(values, grid) };
}

/** Of several readings at one spot the newest, as `lightAt` takes them. */
function newest(light: readonly LightPoint[]): readonly LightPoint[] {
  const late = [...light].sort((a, b) => a.atMs - b.atMs || a.id - b.id);
  return [...new Map(late.map((point) => [`${point.xCm} ${point.yCm} ${point.zCm}`, point])).values()];
}

function levelAway(a: Spot, b: Spot): number {
  return HEIGHT_STRETCH * Math.abs(a.zCm - b.zCm);
}

function uprightAway(a: Spot, b: Spot): number {
  return Math.abs(a.yCm - b.yCm);
}

/** The reading through which the cut meets the most others; of equals the first. */
function busiest(light: readonly LightPoint[], away: (a: Spot, b: Spot) => number): LightPoint | undefined {
  const met = light.map((one) => light.filter((other) => away(one, other) <= READING_RADIUS_CM / 2).length);
  return light[met.indexOf(Math.max(...met))];
}

interface Grid {
  readonly columns: number;
  readonly rows: number;
  readonly spots: readonly Spot[];
  /** The spot of a place in the grid, which may lie between its points. */
  readonly spotAt: (column: number, row: number) => Spot;
}

/** From wall to wall, about square. */
function gridOver(
  { lengthCm, widthCm, heightCm }: Box,
  side: View['side'],
  through: Spot,
  cells: number,
): Grid {
  const acrossCm = side === 'above' ? widthCm : heightCm;
  const step = Math.sqrt((lengthCm * acrossCm) / cells);
  const columns = Math.max(2, Math.min(Math.round(cells / 3), Math.round(lengthCm / step))) + 1;
  const rows = Math.max(2, Math.min(Math.round(cells / 3), Math.round(acrossCm / step))) + 1;
  const spotAt = (column: number, row: number): Spot => {
    const xCm = (column / (columns - 1)) * lengthCm;
    const cm = (row / (rows - 1)) * acrossCm;
    return side === 'above' ? { xCm, yCm: cm, zCm: through.zCm } : { xCm, yCm: through.yCm, zCm: cm };
  };
  const spots = Array.from({ length: columns * rows }, (_, i) =>
    spotAt(i % columns, Math.floor(i / columns)),
  );
  return { columns, rows, spots, spotAt };
}

function linesIn(values: readonly number[], grid: Grid): readonly LightLine[] {
  const { columns, rows, spotAt } = grid;
  const known = values.filter((value) => !Number.isNaN(value));
  const [least, most] = [Math.min(...known), Math.max(...known)];
  if (known.length === 0 || least === most) return [];
  const ticks = scaleLinear([least, most], [0, 1]).ticks(5);
  const isSure = sureIn(values, grid, (ticks[1] ?? most) - (ticks[0] ?? least));
  const draw = contours().size([columns, rows]);
  return ticks
    .filter((tick) => tick > least && tick < most)
    .flatMap((ppfd) =>
      draw
        .contour([...values], ppfd)
        .coordinates.flat()
        .flatMap((ring) => runs(ring, isSure))
        .map((run) => ({ ppfd, spots: run.map(([x = 0, y = 0]) => spotAt(x - 0.5, y - 0.5)) })),
    );
}

/**
 * Whether a line may go through a point: all points of the grid about it are known, and they lie no more than `stepPpfd`
 * apart; where a reading comes into reach the mean jumps, and that is no fall of the light.
 *
 * The library counts from the corner of a cell, so its 0.5 is the first point of the grid. Beside an unknown point, and
 * nowhere else but by chance, it moves a line onto the known one: there the next ones are asked too.
 */
function sureIn(values: readonly number[], { columns, rows }: Grid, stepPpfd: number) {
  return (x: number, y: number): boolean => {
    if (x < 0.5 || y < 0.5 || x > columns - 0.5 || y > rows - 0.5) return false;
    const wider = Number.isInteger(x - 0.5) && Number.isInteger(y - 0.5) ? 1 : 0;
    const [left, right] = [Math.floor(x - 0.5) - wider, Math.ceil(x - 0.5) + wider];
    const [first, last] = [Math.floor(y - 0.5) - wider, Math.ceil(y - 0.5) + wider];
    let [least, most] = [Infinity, -Infinity];
    for (let row = Math.max(0, first); row <= Math.min(rows - 1, last); row++) {
      for (let column = Math.max(0, left); column <= Math.min(columns - 1, right); column++) {
        const value = values[row * columns + column] ?? Number.NaN;
        if (Number.isNaN(value)) return false;
        [least, most] = [Math.min(least, value), Math.max(most, value)];
      }
    }
    return wider === 1 || most - least <= stepPpfd;
  };
}

/** The stretches of a ring whose points all lie inside; a ring that lies inside whole stays closed. */
function runs(
  ring: readonly (readonly number[])[],
  isInside: (x: number, y: number) => boolean,
): readonly (readonly (readonly number[])[])[] {
  const inside = ring.map(([x = 0, y = 0]) => isInside(x, y));
  const gap = inside.indexOf(false);
  if (gap < 0) return [ring];
  // The last point of a ring is its first: begun at a gap, no stretch is cut in two.
  const open = ring.length - 1;
  const found: (readonly number[])[][] = [[]];
  for (let i = 0; i < open; i++) {
    const at = (gap + i) % open;
    const point = ring[at];
    if (point !== undefined && inside[at] === true) found.at(-1)?.push(point);
    else found.push([]);
  }
  return found.filter((run) => run.length > 1);
}
