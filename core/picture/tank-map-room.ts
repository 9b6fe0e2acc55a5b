import type { Point, Rect } from './tank-map-view.ts';

/** Keeps marks with words apart: takes the first of the places offered that is free, and keeps it. */
export interface Room {
  /** The middle of the place taken, or undefined where none is free. */
  readonly take: (width: number, height: number, offered: Iterable<Point>) => Point | undefined;
}

/** Free room between two marks. */
const APART = 2;

export function roomIn(bounds: Rect): Room {
  const taken: Rect[] = [];
  return {
    take: (width, height, offered) => {
      for (const { x, y } of offered) {
        const rect = around(x, y, width / 2 + APART, height / 2 + APART);
        if (!holds(bounds, rect) || taken.some((other) => overlap(other, rect))) continue;
        taken.push(rect);
        return { x, y };
      }
      return undefined;
    },
  };
}

/** A point, then points on wider and wider rings round it, moved into the bounds. */
export function* ringsAround(point: Point, mostPx: number, inside: Rect): Generator<Point> {
  const middle = {
    x: within(point.x, inside.left, inside.right),
    y: within(point.y, inside.top, inside.bottom),
  };
  yield middle;
  for (let radius = 10; radius <= mostPx; radius += 10) {
    const steps = Math.max(8, Math.round(radius / 3));
    for (let step = 0; step < steps; step++) {
      const angle = (2 * Math.PI * (step + 0.5)) / steps;
      yield { x: middle.x + radius * Math.cos(angle), y: middle.y - radius * Math.sin(angle) };
    }
  }
}

function around(x: number, y: number, halfWidth: number, halfHeight: number): Rect {
  return { left: x - halfWidth, right: x + halfWidth, top: y - halfHeight, bottom: y + halfHeight };
}

function holds(outer: Rect, inner: Rect): boolean {
  return (
    inner.left >= outer.left &&
    inner.right <= outer.right &&
    inner.top >= outer.top &&
    inner.bottom <= outer.bottom
  );
}

function overlap(a: Rect, b: Rect): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

function within(value: number, low: number, high: number): number {
  return Math.max(low, Math.min(high, value));
}
