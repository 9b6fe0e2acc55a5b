import { describe, expect, it } from 'vitest';
import { isDailySwing, isWideSwing, moveRemark } from '../../../core/water/move.ts';

// Paces and swings are common practice, no source; quotients by hand.
describe('a move of a level', () => {
  it('is fast beyond its pace a day', () => {
    expect(moveRemark({ id: 'alkalinity', by: 2.5, days: 2 })).toBe(
      'alkalinity rose by 2.5 dKH in 2 days, which is fast (the usual limit is 1 dKH a day)',
    );
    expect(moveRemark({ id: 'alkalinity', by: 2.5, days: 3 })).toBeUndefined();
    expect(moveRemark({ id: 'alkalinity', by: -2, isSwing: true })).toMatch(/fell by 2 dKH in a day/);
  });

  it('may be fast where no time is said, and is not where it took months', () => {
    expect(moveRemark({ id: 'alkalinity', by: 2.5 })).toMatch(/fast if it took less than 2\.5 days/);
    expect(moveRemark({ id: 'alkalinity', by: 1.4 })).toBeUndefined();
    expect(moveRemark({ id: 'alkalinity', by: 2.5, isSlow: true })).toBeUndefined();
  });

  it('minds no rise of nutrients, but their fall', () => {
    expect(moveRemark({ id: 'nitrate', by: 20 })).toBeUndefined();
    expect(moveRemark({ id: 'nitrate', by: -20, days: 5 })).toMatch(/nitrate fell by 20 mg\/L in 5 days/);
  });

  it('swings in a day and a night', () => {
    expect(isDailySwing({ id: 'ph', by: 0.3, days: 0.4 })).toBe(true);
    expect(isDailySwing({ id: 'ph', by: 0.3, days: 3 })).toBe(false);
    expect(isDailySwing({ id: 'alkalinity', by: 0.3, isSwing: true })).toBe(false);
    // 8.3 - 7.9 is 0.40000000000000036.
    expect(isWideSwing({ id: 'ph', by: 8.3 - 7.9 })).toBe(false);
    expect(isWideSwing({ id: 'temperature', by: 2 })).toBe(true);
  });
});
