import { FONT_FAMILY, palette } from './palette.ts';
import { tag, words } from './svg.ts';

/** A drawing for a card: SVG text, and the same in words. */
export interface PrimerPicture {
  readonly svg: string;
  readonly alt: string;
}

/** Picture units; at 400 px wide the smallest words are 14 px. */
export const WIDTH = 640;
export const TITLE = 28;
export const WORDS = 23;
export const LEFT = 24;
export const RIGHT = WIDTH - 24;

export interface Spot {
  readonly x: number;
  readonly y: number;
  readonly fill?: string;
  readonly anchor?: 'start' | 'middle' | 'end';
}

/** Words of the one size, in ink unless said. */
export function label(text: string, { x, y, fill = palette.ink, anchor = 'start' }: Spot): string {
  return words(text, { x, y, size: WORDS, fill, anchor });
}

/** A whole picture: ground, title, parts. */
export function framed(title: string, height: number, ...parts: readonly string[]): string {
  const size = { width: WIDTH, height, viewBox: `0 0 ${WIDTH} ${height}` };
  return tag(
    'svg',
    { xmlns: 'http://www.w3.org/2000/svg', ...size, 'font-family': FONT_FAMILY },
    tag('rect', { width: WIDTH, height, fill: palette.ground }),
    words(title, { x: LEFT, y: 42, size: TITLE, fill: palette.ink }),
    ...parts,
  );
}

/** A straight line. */
export function rule(
  x1: number,
  y1: number,
  x2: number,
  y2: number,
  stroke: string = palette.frame,
  width = 2,
): string {
  return tag('line', { x1, y1, x2, y2, stroke, 'stroke-width': width });
}
