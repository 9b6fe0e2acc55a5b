import { describe, expect, it } from 'vitest';
import { sideBeyond } from '../../../../core/care/urgent/side.ts';
import type { ParameterId } from '../../../../core/water/parameter.ts';

describe('a number is beyond every scale only where it is so in each unit it can be in', () => {
  it.each<[ParameterId, string, 'high' | 'low' | undefined]>([
    ['alkalinity', '60 dKH', 'high'],
    // 20 meq/L x 2.804 dKH per meq/L (CaO, IUPAC 2021 masses) = 56 dKH.
    ['alkalinity', '20 meq/L', 'high'],
    // 60 mg/L CaCO3 / 50.04 mg per meq x 2.804 = 3.4 dKH: low, but not beyond belief.
    ['alkalinity', '60 ppm', undefined],
    ['alkalinity', '60', undefined],
    // 2000 mg/L CaCO3 = 112 dKH, and more in either other unit.
    ['alkalinity', '2000', 'high'],
    // 60 ppb is 0.06 mg/L, a usual reading; 60 mg/L is none.
    ['phosphate', '60', undefined],
    ['phosphate', '60 ppb', undefined],
    ['ammonia', '50000 ppm', 'high'],
    ['ph', '20', 'high'],
    ['alkalinity', '60 bananas', undefined],
  ])('%s %s: %s', (id, text, side) => expect(sideBeyond(id, text)).toBe(side));
});
