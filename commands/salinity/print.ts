import { fixed } from '../../core/quantity/format.ts';
import { onScale, readSalinity, type SalinityReading } from '../../core/water/salinity-reading.ts';
import type { GravityPair } from '../../core/water/specific-gravity.ts';
import { salinityRemark } from '../../core/water/salinity-remark.ts';

/** Salinity of natural seawater, and what most reef keepers aim at (common practice). */
export const seawaterPpt = 35;

/** Before hands go into salt water with mains in it. */
export const UNPLUG = 'Unplug pumps and heaters before you reach into the bin.';

/** "35 ppt". */
export function ppt(practicalSalinity: number): string {
  return `${fixed(practicalSalinity, 1)} ppt`;
}

/** "1.0264". */
export function gravity(sg: number): string {
  return sg.toFixed(4);
}

/** "34.5 ppt (1.026 SG)". */
export function both(practicalSalinity: number, pair: GravityPair, decimals = 1): string {
  return `${fixed(practicalSalinity, decimals)} ppt (${fixed(onScale(practicalSalinity, 'SG', pair), 4)} SG)`;
}

/** "1.030 SG" or "53 mS/cm": the number as the member wrote it. */
export function asRead({ written, scale }: SalinityReading): string {
  if (scale !== 'SG') return `${fixed(written, 2)} ${scale}`;
  const short = written.toFixed(3);
  return `${Number(short) === written ? short : written.toFixed(4)} SG`;
}

/** That a reading is out of bounds, as it was written; undefined where it is usual. */
export function remarkOn(reading: SalinityReading): string | undefined {
  return salinityRemark(reading.practicalSalinity, reading.scale === 'ppt' ? undefined : asRead(reading));
}

/** What was understood of a reading, for the "What I read" lines. */
export function understood(name: string, reading: SalinityReading): readonly string[] {
  const same = reading.scale === 'ppt' ? '' : `, that is ${ppt(reading.practicalSalinity)}`;
  return [`${name} ${asRead(reading)}${same}`, ...reading.notes];
}

/** Reads two salinities; the second takes the pair of the first where it names none. */
export function readPairOf(
  now: string,
  goal: string | undefined,
): { now: SalinityReading; goal: SalinityReading } {
  const first = readSalinity(now, { field: 'now' });
  const second = readSalinity(goal ?? `${seawaterPpt} ppt`, { field: 'goal', pair: first.pair });
  return { now: first, goal: second };
}
