import { scaleUtc, type ScaleTime } from 'd3-scale';
import { MS_PER_DAY } from '../trend/dated.ts';
import { rangeText, wallClock } from './dates.ts';
import { legend } from './legend.ts';
import { FONT_FAMILY, palette } from './palette.ts';
import { drawPanel, panelHeight, WORDS } from './panel.ts';
import { cutTo, tag, textWidth, words } from './svg.ts';
import { timeTicks, type TimeTick } from './time-ticks.ts';
import { MOST_PANELS, type TrendPicture } from './trend-data.ts';

/** Shown 380 px wide on a phone, words of 22 units are 12.3 px high. */
export const WIDTH = 680;
const LEFT = 124;
const RIGHT = WIDTH - 30;
const TITLE = 36;
/** The shortest span the time axis covers. */
const SHORTEST_MS = MS_PER_DAY / 24;

/** A trend picture as SVG text: one panel a parameter, over one time axis. */
export function trendSvg(picture: TrendPicture): string {
  const { panels, title, zone } = picture;
  if (panels.length === 0 || panels.length > MOST_PANELS) throw new Error(`${panels.length} panels`);
  const wall = wallClock(zone);
  const [first, last] = extent(picture);
  const short = Math.max(0, SHORTEST_MS - (last - first)) / 2;
  const [from, to] = [wall(first) - short, wall(last) + short];
  const x = scaleUtc([from, to], [LEFT + 20, RIGHT - 20]);
  const ticks = timeTicks(from, to, (texts, days) => {
    const widest = texts.reduce((most, text) => Math.max(most, textWidth(text, WORDS)), 0);
    return x(from + days * MS_PER_DAY) - x(from) > widest + 14;
  });
  const plotHeight = panels.length === 1 ? 380 : panels.length < 4 ? 230 : 150;
  const parts: string[] = [];
  let y = 108;
  for (const [index, panel] of panels.entries()) {
    parts.push(drawPanel(panel, x, { index, ticks, left: LEFT, right: RIGHT, top: y, plotHeight, wall }));
    y += panelHeight(panel, plotHeight);
  }
  parts.push(drawAxis(ticks, x, y));
  const key = legend(panels, 24, RIGHT, y + 52);
  const height = Math.ceil(y + 52 + key.height + 18);
  const dates = rangeText(wall(first), wall(last));
  const size = { width: WIDTH, height, viewBox: `0 0 ${WIDTH} ${height}` };
  return tag(
    'svg',
    { xmlns: 'http://www.w3.org/2000/svg', ...size, 'font-family': FONT_FAMILY },
    tag('defs', {}, hatch()),
    tag('rect', { width: WIDTH, height, fill: palette.ground }),
    words(cutTo(RIGHT - 24, title, TITLE), { x: 24, y: 52, size: TITLE, fill: palette.ink }),
    words(`${dates}, ${zone}`, { x: 24, y: 90, size: WORDS, fill: palette.quietInk }),
    ...parts,
    key.svg,
  );
}

/** Diagonal lines over a light tint. */
function hatch(): string {
  const [size, fill] = [12, palette.trend];
  const tile = { width: size, height: size };
  const line = { x1: 0, x2: 0, y1: 0, y2: size, stroke: fill, 'stroke-width': 3, 'stroke-opacity': 0.55 };
  return tag(
    'pattern',
    { id: 'range', ...tile, patternUnits: 'userSpaceOnUse', patternTransform: 'rotate(45)' },
    tag('rect', { ...tile, fill, 'fill-opacity': 0.1 }),
    tag('line', line),
  );
}

/** The first and the last instant shown. */
function extent({ panels }: TrendPicture): readonly [number, number] {
  const times = panels.flatMap(({ readings, additions }) =>
    [...readings, ...additions].map(({ atMs }) => atMs),
  );
  return [times.reduce((a, b) => Math.min(a, b)), times.reduce((a, b) => Math.max(a, b))];
}

function drawAxis(ticks: readonly TimeTick[], x: ScaleTime<number, number>, y: number): string {
  return ticks
    .map(({ wall, text }) => {
      const place = Math.min(WIDTH - 8 - textWidth(text, WORDS) / 2, x(wall));
      return words(text, { x: place, y: y + 30, size: WORDS, fill: palette.ink, anchor: 'middle' });
    })
    .join('');
}
