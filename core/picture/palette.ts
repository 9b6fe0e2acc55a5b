/**
 * Every colour a picture uses. Each picture paints its own dark ground, which suits a light page and a dark one.
 *
 * Words and marks stand at 4.5 : 1 or more on the ground (WCAG 2.1, 1.4.3; marks need 3 : 1, 1.4.11), and the marks
 * stay apart for readers who lack one kind of cone (the tests simulate it). Colour never stands alone: shape, dash,
 * hatching or a word says the same.
 */
export const palette = {
  ground: '#101a20',
  ink: '#eef3f5',
  quietInk: '#b4c2c9',
  grid: '#2c3b44',
  frame: '#7a8f9b',
  reading: '#6cb8f0',
  trend: '#ffb070',
  addition: '#cdb4ff',
  alert: '#ff7d94',
  target: '#1d4034',
  targetEdge: '#6fc7a0',
  water: '#15252c',
  settled: '#7fb6f5',
  settledTint: '#1f3d5c',
  watch: '#e8b64c',
  watchTint: '#574313',
  move: '#ff8fb0',
  moveTint: '#5e2138',
  reach: '#c79bff',
  light: '#63d6ad',
  surface: '#7cc0ea',
  sand: '#cfa96b',
} as const;

/** The one typeface pictures are drawn in; the platform ships its file. */
export const FONT_FAMILY = 'DejaVu Sans';
