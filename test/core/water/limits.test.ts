import { describe, expect, it } from 'vitest';
import { isBelievable, limitsOf, sideOf, urgentSide } from '../../../core/water/limits.ts';
import { parameterIds } from '../../../core/water/parameter.ts';

describe('the table of limits', () => {
  it.each(parameterIds)('%s: usual inside believable, urgent outside usual, paces above 0', (id) => {
    const { believable, usual, pace, urgent, error = 0 } = limitsOf(id);
    expect(usual[0]).toBeGreaterThanOrEqual(believable[0]);
    expect(usual[1]).toBeLessThanOrEqual(believable[1]);
    expect(usual[0]).toBeLessThanOrEqual(usual[1]);
    expect(urgent?.low ?? -Infinity).toBeLessThan(usual[0] - error);
    expect(urgent?.high ?? Infinity).toBeGreaterThan(usual[1] + error);
    expect(Math.min(pace?.up ?? 1, pace?.down ?? 1)).toBeGreaterThan(0);
    expect(pace?.gentle ?? 0).toBeLessThanOrEqual(pace?.up ?? 0);
  });

  /** Where corals live in nature lies inside what is believed: reefs at S 28.7 to 40.4 (Guan et al. 2015, PLoS ONE
   * 10:e0128831), sea water of natural composition at S 35 (Millero et al. 2008). */
  it.each([
    ['salinity', 28.7],
    ['salinity', 40.4],
    ['calcium', 422],
    ['magnesium', 1314],
    ['potassium', 409],
    ['strontium', 8.1],
    ['bromide', 69],
    ['alkalinity', 6.6],
  ] as const)('believes %s %d, as in the sea', (id, value) => expect(isBelievable(id, value)).toBe(true));

  // Common practice, no source.
  it.each([
    ['temperature', 30, 'high'],
    ['temperature', 29.9, undefined],
    ['temperature', 19.5, 'low'],
    ['temperature', 20, undefined],
    ['alkalinity', 14, 'high'],
    ['ammonia', 0.25, 'high'],
    ['ammonia', 0.2, undefined],
    ['salinity', 28, 'low'],
    ['salinity', 41, 'high'],
    ['calcium', 900, undefined],
  ] as const)('%s %d is urgent: %s', (id, value, side) => expect(urgentSide(id, value)).toBe(side));

  it('takes a subtraction of floats for what it is', () => {
    expect(sideOf(8.4 - 7.4, [0, 1])).toBeUndefined();
    expect(sideOf(1.1, [0, 1])).toBe('high');
  });
});
