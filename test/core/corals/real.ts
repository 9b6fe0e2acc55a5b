import * as fc from 'fast-check';

/** A number evenly spread over a range: `fc.double` is spread over the bits, so nearly all of its numbers are tiny. */
export function real(min: number, max: number): fc.Arbitrary<number> {
  const steps = 1_000_000;
  return fc.integer({ min: 0, max: steps }).map((step) => min + ((max - min) * step) / steps);
}
