import { expect, it } from 'vitest';
import { compounds, type Compound } from '../../../core/dosing/compound.ts';
import { gramsForGram, sharedBy } from '../../../core/dosing/swap.ts';

function salt(name: string): Compound {
  return compounds.find((one) => one.name === name) ?? expect.unreachable(name);
}

// Molar masses from IUPAC 2021 weights, by hand: NaHCO3 84.006, Na2CO3 105.988, CaCl2 110.98, CaCl2.2H2O 147.01,
// MgCl2.6H2O 203.30, MgSO4.7H2O 246.47, NaNO3 84.994, KNO3 101.10.
it.each([
  ['sodium bicarbonate', 'sodium carbonate', 'alkalinity', 105.988 / 2 / 84.006],
  ['calcium chloride dihydrate', 'calcium chloride anhydrous', 'calcium', 110.98 / 147.01],
  ['magnesium chloride hexahydrate', 'magnesium sulfate heptahydrate', 'magnesium', 246.47 / 203.3],
  ['sodium nitrate', 'potassium nitrate', 'nitrate', 101.1 / 84.994],
] as const)('a gram of %s is so many of %s for %s', (from, to, id, expected) => {
  expect(sharedBy(salt(from), salt(to))).toEqual([id]);
  expect(gramsForGram(salt(from), salt(to), id)).toBeCloseTo(expected, 3);
  expect(gramsForGram(salt(from), salt(to), id) * gramsForGram(salt(to), salt(from), id)).toBeCloseTo(1, 9);
});

it('shares nothing where they are dosed for different things', () =>
  expect(sharedBy(salt('sodium nitrate'), salt('sodium carbonate'))).toEqual([]));
