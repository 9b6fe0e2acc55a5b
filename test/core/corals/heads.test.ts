import { expect, it } from 'vitest';
import { coralById } from '../../../core/corals/coral-list.ts';
import { widthOfHeads } from '../../../core/corals/heads.ts';
import { problemOf } from '../../commands/text.ts';

/** Discs side by side in a round: the width goes with the square root of their number. Widths of heads: from memory. */
it.each([
  ['torch-coral', 1, 7],
  ['torch-coral', 4, 14],
  // 7 x 1.4142 = 9.8995 and 7 x 4.4721 = 31.3, rounded up to what is printed.
  ['torch-coral', 2, 9.9],
  ['torch-coral', 20, 32],
  ['zoanthus', 25, 6],
  ['duncan-coral', 9, 9],
])('%s of %d heads is %d cm wide', (id, heads, expected) => {
  const entry = coralById(id) ?? expect.unreachable();
  const { diameterCm, basis } = widthOfHeads(entry, heads);
  expect(diameterCm).toBeCloseTo(expected, 9);
  expect(basis).toMatch(/from memory/);
});

it('has a range', () => {
  const entry = coralById('torch-coral') ?? expect.unreachable();
  for (const heads of [0, 201, Number.NaN])
    expect(problemOf(() => widthOfHeads(entry, heads)).limit).toBe('1 to 200 heads');
});
