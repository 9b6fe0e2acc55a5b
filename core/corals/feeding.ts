import { inRange } from '../problem.ts';
import { NO3_PER_N, PO4_PER_P } from '../quantity/unit.ts';
import { basisWords } from './basis-words.ts';
import type { Bases } from './basis.ts';

/** A low and a high end. */
export interface Span {
  readonly low: number;
  readonly high: number;
}

/** What a food is made of, as parts of its mass: dry matter of the whole; protein and phosphorus of the dry matter. */
export interface FoodShares {
  readonly dry: Span;
  readonly proteinOfDry: Span;
  readonly phosphorusOfDry: Span;
}

const recalled: Bases = [{ kind: 'memory', note: 'usual label and handbook ranges, never checked' }];

/** Usual shares by kind of food, all from memory; a label is better. `frozen` is thawed and drained. */
export const foods = {
  frozen: {
    dry: { low: 0.05, high: 0.2 },
    proteinOfDry: { low: 0.45, high: 0.7 },
    phosphorusOfDry: { low: 0.008, high: 0.02 },
  },
  flake: {
    dry: { low: 0.92, high: 0.95 },
    proteinOfDry: { low: 0.4, high: 0.55 },
    phosphorusOfDry: { low: 0.008, high: 0.02 },
  },
  pellet: {
    dry: { low: 0.9, high: 0.94 },
    proteinOfDry: { low: 0.4, high: 0.6 },
    phosphorusOfDry: { low: 0.008, high: 0.02 },
  },
} as const satisfies Record<string, FoodShares>;

export type Food = keyof typeof foods;
export const foodsBasis = basisWords(recalled);

/** Protein holds about 16 % nitrogen: N = protein / 6.25, common practice of food analysis. */
export const PROTEIN_PER_N = 6.25;

export interface FeedingAdds {
  /** mg of nitrogen and of phosphorus in the food. */
  readonly nitrogenMg: Span;
  readonly phosphorusMg: Span;
  /** Most that one feeding can add, mg/L NO3 and mg/L PO4: an upper bound, no reading. */
  readonly nitrateMgL: Span;
  readonly phosphateMgL: Span;
  readonly basis: string;
  readonly doubt: string;
}

const sumBasis: Bases = [{ kind: 'practice', note: 'protein / 6.25 is nitrogen' }];

/**
 * What `massG` of food (0.001 to 1000 g) adds to `volumeL` of net water (1 to 50,000 L) when every bit of its nitrogen
 * becomes nitrate and all its phosphorus phosphate, with nothing taken out: the upper bound. NO3 = protein / 6.25 x
 * 4.4266, PO4 = P x 3.0661.
 *
 * Check: 1 g of protein -> 0.16 g N -> 0.708 g NO3; 1 g of flake with 45 % protein in the dry 94 % into 100 L -> 3.0
 * mg/L NO3. Doubt: fish keep part of it, skimming, corals, algae and bacteria take much of the rest.
 *
 * @throws Problem outside the ranges.
 */
export function feedingAdds(massG: number, volumeL: number, food: Food | FoodShares): FeedingAdds {
  const grams = inRange('mass', massG, 0.001, 1000, 'g');
  const litres = inRange('volume', volumeL, 1, 50_000, 'L');
  const named = typeof food === 'string';
  const shares: FoodShares = named ? foods[food] : checked(food);
  const each = (end: keyof Span, part: 'proteinOfDry' | 'phosphorusOfDry'): number =>
    grams * 1000 * shares.dry[end] * shares[part][end];
  const nitrogenMg = span((end) => each(end, 'proteinOfDry') / PROTEIN_PER_N);
  const phosphorusMg = span((end) => each(end, 'phosphorusOfDry'));
  return {
    nitrogenMg,
    phosphorusMg,
    nitrateMgL: span((end) => (nitrogenMg[end] * NO3_PER_N) / litres),
    phosphateMgL: span((end) => (phosphorusMg[end] * PO4_PER_P) / litres),
    basis: basisWords(sumBasis, ...(named ? [recalled] : [])),
    doubt:
      'The most it can add with nothing taken out, not a reading: animals keep part of it, and skimming, corals and algae take more. Test before you act on it.',
  };
}

/** Shares from a label, each from 0 to 1 and in order. */
function checked(shares: FoodShares): FoodShares {
  for (const [name, { low, high }] of Object.entries(shares) as [string, Span][]) {
    inRange(`${name}, low end`, low, 0, 1, 'of the mass');
    inRange(`${name}, high end`, high, low, 1, 'of the mass');
  }
  return shares;
}

function span(of: (end: keyof Span) => number): Span {
  return { low: of('low'), high: of('high') };
}
