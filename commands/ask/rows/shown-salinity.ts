import type { Level } from '../../../core/language/slots.ts';
import { readSalinity } from '../../../core/water/salinity-reading.ts';
import { inPpt } from '../../../core/water/salinity-scale.ts';
import { attempt } from './attempt.ts';

/** The salinity of a 35 ppt standard, and how near a reading of it must be to be its name and not its reading. */
const STANDARD_PPT = 35;
const NEAR_PPT = 0.05;

/** Near nothing on its scale: 1.003 or 2 ppt, but neither 1.023 nor 0.9. */
export function isFresh(value: number): boolean {
  return value > 0.99 && value < 1.2 ? value < 1.006 : value <= 5;
}

/** "the 35 ppt fluid": what it is, and not what an instrument showed. */
export function isName({ text }: Level): boolean {
  const read = attempt(() => readSalinity(text, { field: 'standard' }));
  return read?.scale !== 'SG' && Math.abs((read?.practicalSalinity ?? 0) - STANDARD_PPT) < NEAR_PPT;
}

/** How salty or how much, whatever the scale it was written on. */
export function sizeOf(level: Level): number {
  if (level.of !== 'salinity') return level.value;
  return attempt(() => readSalinity(readable(level), { field: 'first' }).practicalSalinity) ?? level.value;
}

export function readable({ of, text }: Level): string {
  return of === 'salinity' ? inPpt(text) : text;
}
