import { palette } from './palette.ts';
import { additionMark, WORDS } from './panel.ts';
import { tag, textWidth, words } from './svg.ts';
import type { TrendPanel } from './trend-data.ts';

const ROW = 38;
const MARK = 52;

interface Item {
  readonly text: string;
  readonly mark: (x: number, y: number) => string;
  readonly shown: boolean;
}

/** The marks that were used, each with its word, in rows. */
export function legend(
  panels: readonly TrendPanel[],
  left: number,
  right: number,
  top: number,
): { readonly svg: string; readonly height: number } {
  let [x, y] = [left, top];
  const parts: string[] = [];
  for (const { text, mark } of itemsFor(panels).filter(({ shown }) => shown)) {
    const width = MARK + textWidth(text, WORDS) + 12;
    if (x > left && x + width > right) [x, y] = [left, y + ROW];
    const place = { x: x + MARK, y: y + 27, size: WORDS, fill: palette.ink };
    parts.push(mark(x, y + 19), words(text, place));
    x += width;
  }
  return { svg: parts.join(''), height: y - top + ROW };
}

const stroke = (x: number, y: number) => ({ x1: x, x2: x + 44, y1: y, y2: y });
const box = (x: number, y: number) => ({ x, y: y - 13, width: 44, height: 26 });

function itemsFor(panels: readonly TrendPanel[]): readonly Item[] {
  const has = (test: (panel: TrendPanel) => boolean): boolean => panels.some(test);
  return [
    {
      text: 'reading',
      shown: true,
      mark: (x, y) =>
        tag('line', { ...stroke(x, y), stroke: palette.reading, 'stroke-width': 2.5 }) +
        tag('circle', { cx: x + 22, cy: y, r: 8, fill: palette.reading }),
    },
    {
      text: 'moved fast',
      shown: has(({ ringedMs }) => ringedMs.length > 0),
      mark: (x, y) =>
        tag('circle', { cx: x + 22, cy: y, r: 13, fill: 'none', stroke: palette.alert, 'stroke-width': 4 }),
    },
    {
      text: 'addition',
      shown: has(({ additions }) => additions.length > 0),
      mark: (x, y) => additionMark(x + 22, y - 10, 10),
    },
    {
      text: 'trend',
      shown: has(({ trend }) => trend !== undefined),
      mark: (x, y) =>
        tag('line', {
          ...stroke(x, y),
          stroke: palette.trend,
          'stroke-width': 5,
          'stroke-dasharray': '18 9',
        }),
    },
    {
      text: '95 % range',
      shown: has(({ trend }) => trend?.line.slope !== undefined),
      mark: (x, y) =>
        tag('rect', {
          ...box(x, y),
          fill: 'url(#range)',
          stroke: palette.trend,
          'stroke-dasharray': '2 6',
          'stroke-width': 2,
        }),
    },
    {
      text: 'target',
      shown: has(({ target }) => target !== undefined),
      mark: (x, y) =>
        tag('rect', { ...box(x, y), fill: palette.target, stroke: palette.targetEdge, 'stroke-width': 2.5 }),
    },
  ];
}
