import { inRange, Problem } from '../problem.ts';
import { say } from '../wording/say.ts';
import { nothing, rockL, rockShareL, sandL, type Likely } from './displaced.ts';
import { capacityL, floorCm2, type Size } from './shape.ts';

/** What stands in a tank. `size` is the inside of the glass. */
export interface Contents {
  readonly size: Size;
  /** From the inside of the bottom to the water line; unknown: 2 to 5 cm below the rim. */
  readonly waterCm?: number | undefined;
  readonly rock?: { readonly massG: number } | { readonly percent: number } | undefined;
  readonly sandCm?: number | undefined;
  /** Water in the sump while it runs: litres, or percent of the display. */
  readonly sump?: { readonly volumeL: number } | { readonly percent: number } | undefined;
}

/** Litres, part by part: net = water in the glass - rock - sand + sump. */
export interface TankVolume {
  /** The glass to its rim. */
  readonly displayL: number;
  /** Height of the water line. */
  readonly waterCm: Likely;
  readonly waterL: Likely;
  readonly rockL: Likely;
  readonly sandL: Likely;
  readonly sumpL: number;
  readonly netL: Likely;
}

/** How far below the rim a tank is usually filled, cm: common practice, no source. */
const BELOW_RIM_CM = { least: 2, likely: 3, most: 5 } as const;
/** In a very low tank not more than this share of its height. */
const BELOW_RIM_SHARE = 0.2;

/**
 * Net water of a tank from its size and what stands in it, with the range left open by the water line, the density of
 * rock and the pores of sand. Each low end is the least water: full rock, low line.
 *
 * Check (`geometry`): 120 x 50 x 50 cm inside, water 46 cm, 24 kg rock, 5 cm sand, sump 60 L -> 276 - 10 - 18 + 60 =
 * 308 L (305.6 to 310.6). Doubt: pumps, weirs and pipes are not counted; rock and sand are taken as under water, apart.
 *
 * @throws Problem when the water line is above the rim, or rock and sand leave no water.
 */
export function waterIn({ size, waterCm, rock, sandCm = 0, sump }: Contents): TankVolume {
  const displayL = capacityL(size);
  const floor = floorCm2(size);
  const depth = waterDepth(size.heightCm, waterCm);
  const litres = (cm: number): number => (floor * cm) / 1000;
  const waterL = { low: litres(depth.low), likely: litres(depth.likely), high: litres(depth.high) };
  const rocks =
    rock === undefined ? nothing : 'massG' in rock ? rockL(rock.massG) : rockShareL(rock.percent, displayL);
  if (sandCm >= depth.low)
    throw new Problem(say('tank.sandAboveWater'), { field: 'sand', given: `${sandCm} cm` });
  const sand = sandL(sandCm, floor);
  const sumpL =
    sump === undefined ? 0 : 'volumeL' in sump ? sump.volumeL : sumpShareL(sump.percent, displayL);
  if (waterL.low - rocks.high - sand.high <= waterL.low * LEAST_WATER_SHARE) {
    throw new Problem(say('tank.hardlyWater'), {
      field: rock === undefined ? 'sand' : 'rock',
      hint: say('tank.hintRock'),
    });
  }
  const netL = {
    low: waterL.low - rocks.high - sand.high + sumpL,
    likely: waterL.likely - rocks.likely - sand.likely + sumpL,
    high: waterL.high - rocks.low - sand.low + sumpL,
  };
  return { displayL, waterCm: depth, waterL, rockL: rocks, sandL: sand, sumpL, netL };
}

/** Less water than this share beside rock and sand is a slip of the pen: this project's own choice. */
const LEAST_WATER_SHARE = 0.2;

function sumpShareL(percent: number, displayL: number): number {
  return (inRange('sump', percent, 0, 200, '%') / 100) * displayL;
}

/** Height of the water line; unknown: `BELOW_RIM_CM` below the rim. @throws Problem above the rim. */
export function waterDepth(heightCm: number, waterCm: number | undefined): Likely {
  if (waterCm !== undefined) {
    const given = inRange('height', waterCm, 1, 3000, 'cm');
    if (given <= heightCm) return { low: given, likely: given, high: given };
    throw new Problem(say('tank.waterAboveRim'), {
      field: 'height',
      given: `${given} cm`,
      limit: say('tank.atMostInside', { most: `${Number(heightCm.toFixed(1))} cm` }),
    });
  }
  const below = (cm: number): number => heightCm - Math.min(cm, BELOW_RIM_SHARE * heightCm);
  return {
    low: below(BELOW_RIM_CM.most),
    likely: below(BELOW_RIM_CM.likely),
    high: below(BELOW_RIM_CM.least),
  };
}

/**
 * Whether `netL` can be in a display of `displayL` to its rim with `sumpL` beside it. 750 L in 160 x 80 x 55 cm
 * (704 L) cannot. Half a percent is allowed for rounding.
 */
export function fits(netL: number, displayL: number, sumpL = 0): boolean {
  return netL <= (displayL + sumpL) * 1.005;
}
