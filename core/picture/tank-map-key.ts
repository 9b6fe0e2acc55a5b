import type { Scene } from '../corals/scene.ts';
import { fixed } from '../quantity/format.ts';
import { cmOf, type LengthUnit } from '../quantity/chosen-units.ts';
import { palette } from './palette.ts';
import { tag, textWidth, words } from './svg.ts';
import { badge, badgeSize, SMALL } from './tank-map-badge.ts';
import { bodyLines, softPaint } from './tank-map-body.ts';
import type { LightSlice } from './tank-map-field.ts';
import { lightLine, readingMarks } from './tank-map-light.ts';
import { linkLines } from './tank-map-links.ts';
import { verdicts, type Shown, type Trouble } from './tank-map-shown.ts';
import { PAD, type Point, type View } from './tank-map-view.ts';
import { WIDTH } from './trend.ts';

const ROW = 38;
const MARK = 46;

/** What the key explains, and what had no room. */
export interface Keyed {
  readonly scene: Scene;
  readonly shown: readonly Shown[];
  readonly pairs: readonly Trouble[];
  readonly side: View['side'];
  readonly slice: LightSlice | undefined;
  readonly length: LengthUnit;
}

interface Item {
  readonly text: string;
  readonly shown: boolean;
  readonly width: number;
  /** The mark, from its left end. */
  readonly mark: (from: Point) => string;
}

/** The marks that were used, each with its words, in rows. */
export function key(keyed: Keyed, top: number): { readonly svg: string; readonly height: number } {
  let [x, y] = [PAD, top];
  const parts: string[] = [];
  for (const { text, mark, width } of itemsFor(keyed).filter(({ shown }) => shown)) {
    const whole = width + 10 + textWidth(text, SMALL) + 22;
    if (x > PAD && x + whole > WIDTH) [x, y] = [PAD, y + ROW];
    const place = { x: x + width + 10, y: y + 27, size: SMALL, fill: palette.ink };
    parts.push(mark({ x, y: y + 19 }), words(text, place));
    x += whole;
  }
  return { svg: tag('g', { class: 'key' }, ...parts), height: parts.length === 0 ? 0 : y - top + ROW };
}

function itemsFor({ scene, shown, pairs, side, slice, length }: Keyed): readonly Item[] {
  const has = (test: (one: Shown) => boolean): boolean => shown.some(test);
  const cut =
    slice === undefined
      ? ''
      : `${fixed(slice.atCm / cmOf(length), length === 'cm' ? 0 : 1)} ${length} ${side === 'above' ? 'up' : 'from the front'}`;
  const lines = (slice?.lines.length ?? 0) > 0;
  return [
    ...verdicts.map((verdict) =>
      badgeItem(
        verdict,
        has((one) => one.verdict === verdict),
      ),
    ),
    ...(['move', 'watch'] as const).map((verdict) => ({
      text: `conflict: ${verdict}`,
      shown: pairs.some((pair) => pair.verdict === verdict),
      ...lineItem(linkLines[verdict]),
    })),
    { text: 'reach at full stretch', shown: has(({ reachCm }) => reachCm > 0), ...lineItem(bodyLines.reach) },
    {
      text: 'width in a year, at the high end',
      shown: has(({ yearCm, coral }) => yearCm > coral.diameterCm),
      ...lineItem(bodyLines.year),
    },
    { text: 'soft edge: spot said in words', shown: has(({ coral }) => coral.rough), ...softItem },
    {
      text: 'a light reading, PAR',
      shown: scene.light.length > 0,
      width: 14,
      mark: ({ x, y }) => readingMarks([{ x: x + 7, y }]),
    },
    { text: `equal light, cut ${cut}`, shown: lines, ...lineItem(lightLine) },
  ];
}

function badgeItem(verdict: (typeof verdicts)[number], used: boolean): Item {
  const { width } = badgeSize(verdict);
  return {
    text: '',
    shown: used,
    width,
    mark: ({ x, y }) => badge(verdict, verdict, { x: x + width / 2, y }),
  };
}

function lineItem(look: Readonly<Record<string, string | number>>): Pick<Item, 'width' | 'mark'> {
  return { width: MARK, mark: ({ x, y }) => tag('line', { x1: x, x2: x + MARK, y1: y, y2: y, ...look }) };
}

const softItem: Pick<Item, 'width' | 'mark'> = {
  width: 32,
  mark: ({ x, y }) => tag('circle', { cx: x + 16, cy: y, r: 16, fill: softPaint('settled') }),
};
