import { describe, expect, it } from 'vitest';
import { twoReadings } from '../../../core/water/two-readings.ts';

// 15 % of the mean and twice what a kit can tell apart: common practice, no source. Factors by IUPAC 2021 weights:
// NO3/N 62.004/14.007 = 4.427, PO4/P 94.97/30.97 = 3.066, dKH per meq/L 2.804, mg CaCO3 per meq 50.04.
describe('two readings of one water', () => {
  it.each([
    ['alkalinity', 8, 9, true],
    ['alkalinity', 10.1, 13.4, false],
    ['calcium', 400, 440, true],
    ['calcium', 380, 460, false],
    ['ph', 8, 8.15, true],
    ['ph', 8, 8.4, false],
    ['temperature', 25, 26, true],
    ['temperature', 25, 27, false],
    ['phosphate', 0, 0.05, true],
  ] as const)('%s %d and %d: agree %s', (id, a, b, agree) => {
    expect(twoReadings(id, a, b).agree).toBe(agree);
    expect(twoReadings(id, b, a).agree).toBe(agree);
  });

  it.each([
    ['nitrate', 2.3, 10.2, /NO3-N/],
    ['phosphate', 0.1, 0.3, /PO4/],
    ['alkalinity', 2.9, 8.1, /meq\/L and dKH/],
    ['alkalinity', 8, 143, /dKH and ppm/],
  ] as const)('%s %d and %d may be one number in two units', (id, a, b, units) =>
    expect(twoReadings(id, a, b).units).toMatch(units),
  );

  it('names no units where no factor fits, or both agree', () => {
    expect(twoReadings('nitrate', 5, 10).units).toBeUndefined();
    expect(twoReadings('calcium', 100, 400).units).toBeUndefined();
    expect(twoReadings('nitrate', 5, 5.2).units).toBeUndefined();
  });
});
