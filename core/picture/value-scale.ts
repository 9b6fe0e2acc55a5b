import { scaleLinear, type ScaleLinear } from 'd3-scale';
import { fixed } from '../quantity/format.ts';
import type { TrendPanel } from './trend-data.ts';

/** How much the target may widen the axis before it is named rather than shown. */
const MOST_WIDENING = 3;

export interface ValueScale {
  readonly y: ScaleLinear<number, number>;
  readonly ticks: readonly { readonly value: number; readonly text: string }[];
  /** Where the target lies when none of it is in view. */
  readonly targetAside: 'above' | 'below' | undefined;
}

/**
 * Value axis of a panel, `top` and `bottom` in picture units. It spans the readings, at least four steps of the kit, and
 * each edge of the target that widens it no more than threefold.
 */
export function valueScale(panel: TrendPanel, top: number, bottom: number): ValueScale {
  const values = panel.readings.map(({ value }) => value);
  const lowest = values.reduce((a, b) => Math.min(a, b));
  const highest = values.reduce((a, b) => Math.max(a, b));
  const short = Math.max(0, 4 * panel.resolution - (highest - lowest)) / 2;
  let [low, high] = [lowest - short, highest + short];
  const room = (high - low) * MOST_WIDENING;
  for (const edge of panel.target ?? []) {
    if (Math.max(high, edge) - Math.min(low, edge) > room) continue;
    [low, high] = [Math.min(low, edge), Math.max(high, edge)];
  }
  const pad = (high - low) * 0.06;
  const floor = lowest >= 0 && low - pad < 0 ? Math.min(0, lowest) : low - pad;
  const y = scaleLinear([floor, high + pad], [bottom, top]);
  const marks = y.ticks(bottom - top > 250 ? 6 : 3);
  const step = (marks[1] ?? 1) - (marks[0] ?? 0);
  const decimals = Math.min(6, Math.max(0, -Math.floor(Math.log10(step) + 1e-9)));
  const [targetLow = 0, targetHigh = 0] = panel.target ?? [];
  const aside = targetLow > high + pad ? 'above' : targetHigh < floor ? 'below' : undefined;
  return {
    y,
    ticks: marks.map((value) => ({ value, text: fixed(value, decimals).replace('-', '−') })),
    targetAside: panel.target === undefined ? undefined : aside,
  };
}
