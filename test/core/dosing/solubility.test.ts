import { describe, expect, it } from 'vitest';
import { compounds } from '../../../core/dosing/compound.ts';
import { solubility } from '../../../core/dosing/solubility.ts';

/**
 * g of the powder that a litre of water takes up at 20 °C, more than a litre of the solution can hold: ten times the
 * handbook figure for 100 g of water, with the crystal water (CRC Handbook, from memory). Lime: 1.65 g per litre at
 * 20 °C (chemtab 04-26, read), 0.0203 mol/L at 25 °C (Bates et al. 1956).
 */
const inALitreOfWater: Readonly<Record<string, number>> = {
  'sodium bicarbonate': 96,
  'sodium carbonate': 215,
  'sodium carbonate monohydrate': 261,
  'sodium carbonate decahydrate': 580,
  'calcium chloride anhydrous': 745,
  'calcium chloride dihydrate': 987,
  'calcium chloride hexahydrate': 1471,
  'calcium hydroxide': 1.51,
  'magnesium chloride hexahydrate': 1166,
  'magnesium sulfate heptahydrate': 690,
  'potassium chloride': 340,
  'sodium nitrate': 876,
  'potassium nitrate': 316,
  'monosodium phosphate': 869,
  'disodium phosphate': 78,
  'monopotassium phosphate': 226,
  'strontium chloride hexahydrate': 890,
  'sodium bromide': 908,
  'potassium iodide': 1440,
};

describe('solubility', () => {
  it.each(compounds.map((compound) => ({ compound, name: compound.name })))(
    '$name has a limit below what a litre of water takes up, and a stock below that',
    ({ compound, name }) => {
      const { mostGL, stockGL, source } = solubility(compound);
      expect(mostGL).toBeLessThan(inALitreOfWater[name] ?? 0);
      expect(mostGL).toBeGreaterThan((inALitreOfWater[name] ?? 0) * 0.4);
      expect(stockGL).toBeCloseTo(0.8 * mostGL, 9);
      expect(source).toBe(name === 'calcium hydroxide' ? 'bates56' : 'memory');
    },
  );

  it.each([
    ['sodium bicarbonate', 87.59],
    ['calcium chloride dihydrate', 565.5],
    ['calcium hydroxide', 1.504],
  ])('%s: %d g/L (by hand)', (name, gL) => {
    const compound = compounds.find((each) => each.name === name);
    if (compound === undefined) throw new Error(name);
    expect(solubility(compound).mostGL / gL).toBeCloseTo(1, 3);
  });
});
