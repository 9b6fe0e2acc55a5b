import { palette } from './palette.ts';
import { tag, textWidth, words } from './svg.ts';
import { cmOf, type LengthUnit } from '../quantity/chosen-units.ts';
import { SMALL } from './tank-map-badge.ts';
import type { Region, View } from './tank-map-view.ts';

/** Lengths between two marks, the longest first; whole feet where inches allow it. */
const STEPS = { cm: [100, 50, 20, 10, 5, 2, 1], in: [48, 24, 12, 6, 3, 2, 1] } as const;
/** Free room between two numbers, picture units. */
const APART = 26;
const TICK = 8;

/** Marks with lengths along the lower edge of the glass, from its left end: "0 20 40 cm". */
export function edgeScale(view: View, region: Region | undefined, unit: LengthUnit): string {
  const from = (region?.fromCm ?? 0) / cmOf(unit);
  const pxPerUnit = view.pxPerCm * cmOf(unit);
  const to = from + (view.right - view.left) / pxPerUnit;
  const widest = textWidth(`${Math.ceil(to)} ${unit}`, SMALL);
  const steps: readonly number[] = STEPS[unit];
  const step = steps.findLast((each) => each * pxPerUnit > widest + APART) ?? steps[0] ?? 1;
  const first = Math.ceil(from / step - 1e-9) * step;
  const marks = Array.from(
    { length: Math.floor((to - first) / step + 1e-9) + 1 },
    (_, i) => first + i * step,
  );
  const y = view.bottom + 6;
  const parts = marks.map((length, i) => {
    const x = view.left + (length - from) * pxPerUnit;
    const text = i === marks.length - 1 ? `${length} ${unit}` : String(length);
    const half = textWidth(text, SMALL) / 2;
    const middle = Math.max(view.left + half - 4, Math.min(view.right - half + 4, x));
    return [
      tag('line', { x1: x, x2: x, y1: y, y2: y + TICK, stroke: palette.ink, 'stroke-width': 2.5 }),
      words(text, { x: middle, y: y + TICK + 20, size: SMALL, fill: palette.ink, anchor: 'middle' }),
    ].join('');
  });
  return tag('g', { class: 'scale' }, ...parts);
}
