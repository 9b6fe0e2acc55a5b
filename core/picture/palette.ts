/**
 * Every colour a picture uses. Each picture paints its own light ground, so it reads the same on a dark page.
 *
 * Words and marks stand at 4.5 : 1 or more on the ground (WCAG 2.1, 1.4.3; marks need 3 : 1, 1.4.11), and the marks
 * stay apart for readers who lack one kind of cone (the tests simulate it). Colour never stands alone: shape, dash,
 * hatching or a word says the same.
 */
export const palette = {
  ground: '#fbfaf5',
  ink: '#15232b',
  quietInk: '#4a5961',
  grid: '#d8dcd8',
  frame: '#8b979b',
  reading: '#0a5c8f',
  trend: '#a23b00',
  addition: '#3c2a66',
  alert: '#8c1030',
  target: '#d6ebdd',
  targetEdge: '#3f7a5c',
  water: '#eaf2f1',
  settled: '#1f5fa8',
  settledTint: '#cfe0f2',
  watch: '#8a5a00',
  watchTint: '#f7dc9a',
  move: '#7a0f3c',
  moveTint: '#e8a9b8',
  reach: '#5b2a86',
  light: '#1d6b4f',
  surface: '#3f7fa8',
  sand: '#9c7b45',
} as const;

/** The one typeface pictures are drawn in; the platform ships its file. */
export const FONT_FAMILY = 'DejaVu Sans';
