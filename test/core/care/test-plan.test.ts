import { describe, expect, it } from 'vitest';
import { testPlan, testRule } from '../../../core/care/test-plan.ts';
import { tankKinds } from '../../../core/water/targets.ts';

const often = (kind: Parameters<typeof testPlan>[0], id: string) =>
  testPlan(kind).find(({ parameter }) => parameter === id)?.often;

// All frequencies are common practice, no source.
describe('testPlan', () => {
  it.each([...tankKinds, 'new'] as const)('%s: alkalinity and salinity are never left out', (kind) => {
    expect(often(kind, 'alkalinity')).toBeDefined();
    expect(often(kind, 'salinity')).toMatch(/weekly|daily/);
  });

  it('tests a mixed reef as keepers do: alkalinity twice a week at first, then weekly, ammonia only in trouble', () => {
    expect(often('mixed', 'alkalinity')).toMatch(/^twice a week until its daily use is known, then weekly/);
    expect(often('mixed', 'calcium')).toBe('every 1 to 2 weeks');
    expect(often('mixed', 'magnesium')).toBe('monthly');
    expect(often('mixed', 'nitrate')).toBe('weekly');
    expect(often('mixed', 'ph')).toBe('optional');
    expect(often('mixed', 'ammonia')).toMatch(/^only after/);
    expect(often('new', 'ammonia')).toMatch(/^daily/);
  });

  it.each([...tankKinds, 'new'] as const)('%s: each reminder keeps the rhythm its words name', (kind) => {
    for (const { often: words, remind } of testPlan(kind)) {
      if (typeof remind === 'object') continue;
      const [low = 0, high = low] = spanDays(words);
      expect(remind, words).toBeGreaterThanOrEqual(low);
      expect(remind, words).toBeLessThanOrEqual(high);
    }
  });

  it('makes weeks of seven days, and two days three apart of twice a week', () => {
    expect(testRule(2, 6)).toEqual({ every: 'days', count: 2 });
    expect(testRule(3.5, 6)).toEqual({ every: 'weeks', count: 1, on: [2, 6] });
    expect(testRule(3.5, 1)).toEqual({ every: 'weeks', count: 1, on: [1, 4] });
    expect(testRule(28, 7)).toEqual({ every: 'weeks', count: 4, on: [7] });
  });
});

/** "every 1 to 2 weeks" is 7 to 14 days, "monthly" 28 to 31. */
function spanDays(words: string): readonly number[] {
  const span = /every (\d+) to (\d+) (day|week)s/.exec(words);
  const unit = span?.[3] === 'week' ? 7 : 1;
  if (span !== null) return [Number(span[1]) * unit, Number(span[2]) * unit];
  if (/^(?:twice a week|1 to 2 times a week)/.test(words)) return [3, 7];
  if (words.startsWith('every 2 weeks')) return [14, 14];
  if (words.startsWith('monthly')) return [28, 31];
  if (words.startsWith('weekly')) return [7, 7];
  if (words.startsWith('daily')) return [1, 1];
  throw new Error(`no rhythm in ${words}`);
}
