import type { SwapDay } from '../../core/change/day-plan.ts';
import type { SalinityReading } from '../../core/water/salinity-reading.ts';
import type { Fact } from '../answer.ts';
import type { Water } from '../waterchange/pour.ts';
import type { Pace } from './pace.ts';
import { both } from './print.ts';
import { salinityPacePpt } from '../../core/water/salinity-pace.ts';

/** A tank to be brought to another salinity, and the lines of what was read. */
export interface Plan {
  readonly now: SalinityReading;
  readonly goalS: number;
  readonly water: Water;
  readonly read: readonly string[];
}

export const instrumentFirst =
  'Check the instrument on a 35 ppt standard and read the tank again before you change anything.';

/** What a pace beyond the usual can do. */
export function paceDangers({ fast }: Pace): readonly string[] {
  const { down, up } = salinityPacePpt;
  return fast
    ? [`This is faster than the usual ${down} ppt a day downward, ${up} ppt upward: animals suffer.`]
    : [];
}

export function lead(swaps: readonly SwapDay[], water: Water, what: string): string {
  const parts = swaps.map(({ fraction }) => fraction);
  const least = water.part(Math.min(...parts));
  const largest = water.part(Math.max(...parts));
  if (swaps.length === 1) return `Swap ${largest} for ${what}, in one day.`;
  const each = least === largest ? least : `at most ${largest}`;
  return `Over ${swaps.length} days swap ${each} a day for ${what}, ${water.sum(parts)} in all.`;
}

export function dayFacts(swaps: readonly SwapDay[], { water, now }: Plan): readonly Fact[] {
  return swaps.map(({ toS, fraction }, day) => ({
    label: `day ${day + 1}`,
    value: `swap ${water.part(fraction)}, ends at ${both(toS, now.pair, 2)}`,
  }));
}
