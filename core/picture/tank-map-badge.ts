import type { Verdict } from '../corals/scene.ts';
import { palette } from './palette.ts';
import { tag, textWidth, words } from './svg.ts';
import { round, type Point } from './tank-map-view.ts';

/** Size of the smallest words: more than 9 px when the picture is shown 400 px wide. */
export const SMALL = 22;
const HEIGHT = 28;

/** Line and fill of a verdict. The shape of the badge says the same without colour. */
export const verdictColours = {
  settled: { line: palette.settled, tint: palette.settledTint, fill: palette.ground, ink: palette.ink },
  watch: { line: palette.watch, tint: palette.watchTint, fill: palette.watchTint, ink: palette.ink },
  move: { line: palette.move, tint: palette.moveTint, fill: palette.move, ink: palette.ground },
} as const satisfies Record<Verdict, Record<'line' | 'tint' | 'fill' | 'ink', string>>;

/** Width and height a badge takes. */
export function badgeSize(text: string): { readonly width: number; readonly height: number } {
  return { width: Math.ceil(textWidth(text, SMALL)) + 14, height: HEIGHT };
}

/** Words in the shape of a verdict: round ends for settled, square corners for watch, pointed ends for move. */
export function badge(verdict: Verdict, text: string, middle: Point): string {
  const { line, fill, ink } = verdictColours[verdict];
  const { width, height } = badgeSize(text);
  const [left, top] = [middle.x - width / 2, middle.y - height / 2];
  const box = { x: left, y: top, width, height };
  const look = { fill, stroke: line, 'stroke-width': 2.5 };
  const shape = {
    settled: () => tag('rect', { ...box, rx: height / 2, ...look }),
    watch: () => tag('rect', { ...box, ...look }),
    move: () => tag('polygon', { points: pointed(middle, width, height), ...look }),
  }[verdict]();
  return shape + words(text, { x: middle.x, y: middle.y + 8, size: SMALL, fill: ink, anchor: 'middle' });
}

function pointed({ x, y }: Point, width: number, height: number): string {
  const [half, up, tip] = [width / 2, height / 2, 8];
  const corners = [
    [x - half - 2, y],
    [x - half + tip, y - up],
    [x + half - tip, y - up],
    [x + half + 2, y],
    [x + half - tip, y + up],
    [x - half + tip, y + up],
  ];
  return corners.map((pair) => pair.map(round).join()).join(' ');
}
