import { describe, expect, it } from 'vitest';
import { isMoreThanUsual } from '../../../core/dosing/usual-use.ts';
import type { ParameterId } from '../../../core/water/parameter.ts';

// Common practice, no source; calcium goes with alkalinity, 20.04 mg/L for 2.804 dKH (CaCO3, IUPAC 2021).
describe('a use that is too large for a day', () => {
  it.each<readonly [ParameterId, number, boolean]>([
    ['alkalinity', 1, false],
    ['alkalinity', 2, true],
    ['calcium', (20.04 / 2.804) * 0.9, false],
    ['calcium', 12, true],
    ['magnesium', 30, true],
    ['nitrate', 30, false],
  ])('%s %d', (id, used, isMore) => expect(isMoreThanUsual(id, used)).toBe(isMore));
});
