import { describe, expect, it } from 'vitest';
import { testPlan } from '../../../core/care/test-plan.ts';
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
});
