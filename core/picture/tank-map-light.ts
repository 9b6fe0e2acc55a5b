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

/** The PAR of each reading, beside its mark. */
export function lightNumbers(light: readonly LightPoint[], { at }: View, room: Room): string {
  return light.map(({ ppfd, ...spot }) => reading(String(Math.round(ppfd)), at(spot), room)).join('');
}

/** The PAR of each line, beside its longest stretch that has room. */
export function lightWords(slice: LightSlice, { at }: View, room: Room): string {
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

const OUT = 17;

function reading(text: string, { x, y }: Point, room: Room): string {
  const [width, height] = [textWidth(text, SMALL) + 4, SMALL];
  const aside = width / 2 + OUT - 6;
  const offered = [
    { x: x + aside, y },
    { x: x - aside, y },
    { x, y: y - OUT - 3 },
    { x, y: y + OUT + 3 },
  ];
  const middle = room.take(width, height, offered);
  return middle === undefined ? '' : onGround(text, middle, width, height, palette.ink);
}

function parWords(ppfd: number, offered: readonly Point[], room: Room): string {
  const text = `${Math.round(ppfd)} PAR`;
  const [width, height] = [textWidth(text, SMALL) + 8, SMALL + 4];
  const middle = room.take(width, height, offered);
  if (middle === undefined) return '';
  return onGround(text, middle, width, height, palette.light);
}

/** Words on a patch of the ground, which keeps lines from running through them. */
function onGround(text: string, { x, y }: Point, width: number, height: number, fill: string): string {
  const patch = { x: x - width / 2, y: y - height / 2, width, height, fill: palette.ground };
  return (
    tag('rect', { ...patch, 'fill-opacity': 0.85 }) +
    words(text, { x, y: y + 8, size: SMALL, fill, anchor: 'middle' })
  );
}
