import type { SourceCode } from '../sources.ts';
import { molarMass } from '../quantity/molar-mass.ts';
import { type Compound, compoundMolarMass } from './compound.ts';
import { saturationGL } from './limewater.ts';

/**
 * Grams of the salt without its crystal water that 100 g of water hold at 20 °C. All of them handbook values from
 * memory (CRC Handbook of Chemistry and Physics, Lange's Handbook of Chemistry), none seen again for this table, so
 * the answers say "from memory". Doubt: a few per cent between handbooks; impurities; sodium bromide and strontium
 * chloride above all.
 */
const per100gWater: Readonly<Record<string, number>> = {
  'sodium bicarbonate': 9.6,
  'sodium carbonate': 21.5,
  'sodium carbonate monohydrate': 21.5,
  'sodium carbonate decahydrate': 21.5,
  'calcium chloride anhydrous': 74.5,
  'calcium chloride dihydrate': 74.5,
  'calcium chloride hexahydrate': 74.5,
  'magnesium chloride hexahydrate': 54.6,
  'magnesium sulfate heptahydrate': 33.7,
  'potassium chloride': 34,
  'sodium nitrate': 87.6,
  'potassium nitrate': 31.6,
  'monosodium phosphate': 86.9,
  'disodium phosphate': 7.8,
  'monopotassium phosphate': 22.6,
  'strontium chloride hexahydrate': 52.9,
  'sodium bromide': 90.8,
  'potassium iodide': 144,
};

/** Part of the limit a stock is made to: a cool room then throws no crystals. Own choice. */
const STOCK_PART = 0.8;

/** How strong a solution of a compound can be, g of the powder per litre of finished solution. */
export interface Solubility {
  /** What is sure to dissolve at room temperature. */
  readonly mostGL: number;
  /** What a stock should hold at most. */
  readonly stockGL: number;
  readonly tempC: number;
  readonly source: SourceCode;
}

/**
 * What dissolves of each compound. From s g in 100 g of water the solution holds s / (100 + s) of its mass, and its
 * litre weighs at least 1 kg, so at least 1000 s / (100 + s) g per litre: the safe side by the excess of its density, up
 * to a third for the chlorides. A hydrate counts with its crystal water. Calcium hydroxide: saturated limewater at
 * 25 °C, the lowest of its sources (bates56).
 *
 * Check: NaHCO3 9.6 -> 87.6 g/L; CaCl2·2H2O -> 566; Ca(OH)2 -> 1.504 (0.0203 mol/L).
 */
export function solubility(compound: Compound): Solubility {
  if (compound.hazard === 'lime') {
    const mostGL = saturationGL(25).low;
    return { mostGL, stockGL: mostGL * STOCK_PART, tempC: 25, source: 'bates56' };
  }
  const inWater = per100gWater[compound.name];
  if (inWater === undefined) throw new Error(`no solubility of ${compound.name}`);
  const dryPart = 1 - (compound.water * WATER_G_PER_MOL) / compoundMolarMass(compound);
  const mostGL = (1000 * inWater) / (100 + inWater) / dryPart;
  return { mostGL, stockGL: mostGL * STOCK_PART, tempC: 20, source: 'memory' };
}

const WATER_G_PER_MOL = molarMass({ H: 2, O: 1 });
