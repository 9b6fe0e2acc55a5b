import { line } from 'd3-shape';
import type { LightPoint, Spot } from '../corals/scene.ts';
import { palette } from './palette.ts';
import { tag, textWidth, words } from './svg.ts';
import { SMALL } from './tank-map-badge.ts';
import type { LightLine, LightSlice } from './tank-map-field.ts';
import type { Room } from './tank-map-room.ts';
import { round, type Point, type View } from './tank-map-view.ts';

export const lightLine = { fill: 'none', stroke: palette.light, 'stroke-width': 2 } as const;

/** Lines of equal light. */
export function lightLines({ lines }: LightSlice, { at }: View): string {
  const path = line<Spot>(
    (spot) => at(spot).x,
    (spot) => at(spot).y,
  ).digits(1);
  return tag(
    'g',
    { class: 'light', ...lightLine },
    ...lines.map(({ spots }) => tag('path', { d: path(spots) ?? '' })),
  );
}

const cross = { fill: 'none', stroke: palette.light, 'stroke-width': 2.5 } as const;

/** Small upright crosses. */
export function readingMarks(middles: readonly Point[]): string {
  const d = middles.map(({ x, y }) => `M${round(x - 6)} ${round(y)}h12m-6 -6v12`).join('');
  return tag('path', { class: 'readings', d, ...cross });
}

/** The PAR of each line, on its longest stretch that has room; where there is no line, that of each reading. */
export function lightWords(
  slice: LightSlice,
  light: readonly LightPoint[],
  { at }: View,
  room: Room,
): string {
  if (slice.lines.length === 0)
    return light.map((point) => parWords(point.ppfd, [beside(at(point))], room)).join('');
  const levels = [...new Set(slice.lines.map(({ ppfd }) => ppfd))];
  return levels.map((level) => parWords(level, places(slice.lines, level, at), room)).join('');
}

function places(lines: readonly LightLine[], level: number, at: View['at']): readonly Point[] {
  return lines
    .filter(({ ppfd }) => ppfd === level)
    .sort((a, b) => b.spots.length - a.spots.length)
    .flatMap(({ spots }) => fromMiddle(spots).map(at));
}

/** The items from the middle outwards. */
function fromMiddle<T>(items: readonly T[]): readonly T[] {
  const middle = Math.floor(items.length / 2);
  return items
    .map((item, i) => ({ item, off: Math.abs(i - middle) }))
    .sort((a, b) => a.off - b.off)
    .map(({ item }) => item);
}

function beside({ x, y }: Point): Point {
  return { x, y: y - 24 };
}

function parWords(ppfd: number, offered: readonly Point[], room: Room): string {
  const text = `${Math.round(ppfd)} PAR`;
  const [width, height] = [textWidth(text, SMALL) + 8, SMALL + 4];
  const middle = room.take(width, height, offered);
  if (middle === undefined) return '';
  const { x, y } = middle;
  const ground = {
    x: x - width / 2,
    y: y - height / 2,
    width,
    height,
    fill: palette.ground,
    'fill-opacity': 0.9,
  };
  return (
    tag('rect', ground) + words(text, { x, y: y + 8, size: SMALL, fill: palette.light, anchor: 'middle' })
  );
}
