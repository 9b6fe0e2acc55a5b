import type { LightPoint, Spot } from './scene.ts';

/** Light at a spot, umol m-2 s-1, as far as readings near it tell. */
export interface LightHere {
  readonly lowPpfd: number;
  readonly ppfd: number;
  readonly highPpfd: number;
  /** Straight distance to the nearest reading, cm. */
  readonly nearestCm: number;
}

/** Readings further than this say nothing of a spot, cm with the height stretched: project rule. */
export const READING_RADIUS_CM = 30;
/** A step in height counts as this much sideways, since light falls off with depth faster: project rule. */
export const HEIGHT_STRETCH = 2;
/** The range at the edge of the radius, as a part of the value either way; it falls to nothing at a reading. */
const SPREAD_AT_EDGE = 0.6;
/** Closer than this is the spot of the reading itself, cm. */
const SAME_SPOT_CM = 1e-3;

/**
 * Light at a spot from measured points: the mean of the readings within `READING_RADIUS_CM`, each weighed by one over
 * the square of its distance (inverse-distance weighting), with the height stretched. Exact at a point. Between points
 * the range stays between the least and the greatest of them; at their side it opens with the distance and nothing is
 * carried on (no fall with depth is made up). undefined: no reading near here. The newest of several at one spot counts.
 *
 * Check: 100 and 200 PAR 20 cm apart -> 150 in the middle. Doubt: a shadow or a narrow beam between two points is not
 * seen; the radius, the stretch and the spread are project rules.
 */
export function lightAt(points: readonly LightPoint[], spot: Spot): LightHere | undefined {
  const current = points
    .map((point) => ({ point, away: stretchedCm(point, spot) }))
    .filter(({ away }) => away <= READING_RADIUS_CM)
    .filter(({ point }, _, near) => !near.some((other) => replaces(other.point, point)));
  if (current.length === 0) return undefined;
  const here = current.find(({ away }) => away < SAME_SPOT_CM)?.point.ppfd;
  if (here !== undefined) return { lowPpfd: here, ppfd: here, highPpfd: here, nearestCm: 0 };
  const nearestCm = Math.min(...current.map(({ point }) => straightCm(point, spot)));
  const weights = current.map(({ point, away }) => ({ ppfd: point.ppfd, weight: 1 / (away * away) }));
  const total = weights.reduce((sum, { weight }) => sum + weight, 0);
  const [least, most] = [Math.min(...weights.map((w) => w.ppfd)), Math.max(...weights.map((w) => w.ppfd))];
  const mean = weights.reduce((sum, { ppfd, weight }) => sum + (ppfd * weight) / total, 0);
  const ppfd = Math.min(most, Math.max(least, mean));
  const spread = (SPREAD_AT_EDGE * Math.min(...current.map(({ away }) => away))) / READING_RADIUS_CM;
  const [low, high] = [ppfd * (1 - spread), ppfd * (1 + spread)];
  const between = current.some(({ point }, i) =>
    current.slice(i + 1).some((other) => facesAway(point, other.point, spot)),
  );
  return between
    ? { lowPpfd: Math.max(low, least), ppfd, highPpfd: Math.min(high, most), nearestCm }
    : { lowPpfd: low, ppfd, highPpfd: high, nearestCm };
}

/**
 * The same for a spot that can be off by `errorCm` on each axis: the least and the greatest of it and of the six spots
 * at the ends of the error. undefined when the spot itself has no reading near.
 */
export function lightAround(
  points: readonly LightPoint[],
  spot: Spot,
  [ex, ey, ez]: readonly [number, number, number],
): LightHere | undefined {
  const middle = lightAt(points, spot);
  if (middle === undefined || ex + ey + ez === 0) return middle;
  const around = [
    { ...spot, xCm: spot.xCm - ex },
    { ...spot, xCm: spot.xCm + ex },
    { ...spot, yCm: spot.yCm - ey },
    { ...spot, yCm: spot.yCm + ey },
    { ...spot, zCm: spot.zCm - ez },
    { ...spot, zCm: spot.zCm + ez },
  ].flatMap((one) => lightAt(points, one) ?? []);
  return {
    lowPpfd: Math.min(middle.lowPpfd, ...around.map((one) => one.lowPpfd)),
    ppfd: middle.ppfd,
    highPpfd: Math.max(middle.highPpfd, ...around.map((one) => one.highPpfd)),
    nearestCm: middle.nearestCm,
  };
}

function replaces(other: LightPoint, point: LightPoint): boolean {
  const sameSpot = other.xCm === point.xCm && other.yCm === point.yCm && other.zCm === point.zCm;
  return sameSpot && (other.atMs > point.atMs || (other.atMs === point.atMs && other.id > point.id));
}

/** Whether two readings lie to opposite sides of a spot: the angle between them is 90 degrees or more. */
function facesAway(a: Spot, b: Spot, from: Spot): boolean {
  const dot =
    (a.xCm - from.xCm) * (b.xCm - from.xCm) +
    (a.yCm - from.yCm) * (b.yCm - from.yCm) +
    HEIGHT_STRETCH ** 2 * (a.zCm - from.zCm) * (b.zCm - from.zCm);
  return dot <= 0;
}

function stretchedCm(a: Spot, b: Spot): number {
  const rise = HEIGHT_STRETCH * (a.zCm - b.zCm);
  return Math.sqrt((a.xCm - b.xCm) ** 2 + (a.yCm - b.yCm) ** 2 + rise ** 2);
}

function straightCm(a: Spot, b: Spot): number {
  return Math.sqrt((a.xCm - b.xCm) ** 2 + (a.yCm - b.yCm) ** 2 + (a.zCm - b.zCm) ** 2);
}
