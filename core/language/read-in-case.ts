import { withSpoken } from './bare-level.ts';
import type { Case } from './case.ts';
import { withForm } from './form-in-case.ts';
import { withParts } from './part-in-case.ts';
import { withPutRight } from './put-right.ts';
import type { Reading } from './reading.ts';
import { withWater } from './water-in-case.ts';

/**
 * A message read in its case: what a number is, where its own words leave it open, is known from what was told before.
 * First the form of a salt, then numbers that are put right, then levels without a name, their parts, and volumes.
 */
export function readInCase(reading: Reading, before: Case): Reading {
  return [withForm, withPutRight, withSpoken, withParts, withWater].reduce(
    (read, step) => step(read, before),
    reading,
  );
}
