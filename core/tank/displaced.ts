import { inRange } from '../problem.ts';

/** A value with the range it may lie in. */
export interface Likely {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

/**
 * Grams per millilitre of reef rock, by the water it pushes aside. Solid aragonite is 2.93 and calcite 2.71 (from
 * memory); closed pores make a rock displace as if it were 2.2 to 2.7 (common practice, no source). Rock weighed wet
 * carries water in its open pores and displaces less than this says.
 */
const ROCK_G_ML = { low: 2.2, likely: 2.4, high: 2.7 } as const;

/** Share of a bed of sand that is water: common practice, no source; loosely packed grains leave 35 to 45 %. */
const PORE_PERCENT = { low: 35, likely: 40, high: 45 } as const;

/** How far a guessed share may be off, as a share of itself: this project's own choice. */
const GUESS = 1 / 3;

/** Litres displaced by `massG` (1 g to 5 t) of rock. 24 kg -> 10 L (8.9 to 10.9). */
export function rockL(massG: number): Likely {
  const checked = inRange('rock', massG, 1, 5e6, 'g') / 1000;
  return {
    low: checked / ROCK_G_ML.high,
    likely: checked / ROCK_G_ML.likely,
    high: checked / ROCK_G_ML.low,
  };
}

/** Litres displaced by rock guessed at `percent` (0 to 60) of the display: 15 % of 300 L -> 45 L (30 to 60). */
export function rockShareL(percent: number, displayL: number): Likely {
  const likely = (inRange('rock', percent, 0, 60, '%') / 100) * displayL;
  return { low: likely * (1 - GUESS), likely, high: likely * (1 + GUESS) };
}

/**
 * Litres displaced by the grains of a bed of sand `depthCm` deep (0 to 50) on `floorCm2`: the bed less its water.
 * 5 cm on 6000 cm2 is a bed of 30 L -> 18 L (16.5 to 19.5).
 */
export function sandL(depthCm: number, floorCm2: number): Likely {
  const bedL = (inRange('sand', depthCm, 0, 50, 'cm') * floorCm2) / 1000;
  const grains = (pore: number): number => bedL * (1 - pore / 100);
  return {
    low: grains(PORE_PERCENT.high),
    likely: grains(PORE_PERCENT.likely),
    high: grains(PORE_PERCENT.low),
  };
}

export const nothing: Likely = { low: 0, likely: 0, high: 0 };
