import { describe, expect, it } from 'vitest';
import { usualRange } from '../../../core/water/assess.ts';
import { parameterIds } from '../../../core/water/parameter.ts';
import { targetFor, tankKinds } from '../../../core/water/targets.ts';

describe('targetFor', () => {
  // Common practice, no source.
  it.each([
    ['soft', [33, 36]],
    ['large-polyp', [34, 36]],
    ['small-polyp', [34, 36]],
    ['mixed', [34, 36]],
    ['fish', [32.5, 36.5]],
  ] as const)('salinity with %s', (kind, range) => {
    expect(targetFor(kind, 'salinity')).toMatchObject({ range, basis: ['practice'] });
  });

  it.each([
    ['small-polyp', 'alkalinity', [7, 9]],
    ['large-polyp', 'alkalinity', [8, 10]],
    ['soft', 'phosphate', [0.03, 0.2]],
    ['small-polyp', 'temperature', [24.5, 26.5]],
  ] as const)('%s: %s', (kind, id, range) => expect(targetFor(kind, id).range).toEqual(range));

  it('falls back on the usual range', () => {
    expect(targetFor('mixed', 'calcium').range).toEqual(usualRange('calcium'));
    for (const kind of tankKinds)
      for (const id of parameterIds) {
        const [low, high] = targetFor(kind, id).range;
        expect(low).toBeLessThanOrEqual(high);
      }
  });
});
