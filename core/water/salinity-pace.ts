import { limitsOf } from './limits.ts';
import { specificGravity } from './specific-gravity.ts';
import { fixed } from '../quantity/format.ts';

const { up = Number.NaN, down = Number.NaN } = limitsOf('salinity').pace ?? {};

/** The most a tank with corals is moved in a day, ppt: one pace, whatever scale the reading is on (limits.ts). */
export const salinityPacePpt = { up, down } as const;

/** Gravity (25/25) that a step of ppt near 35 is (fm83). Check: 1 ppt -> 0.00076, 1.33 ppt -> 0.0010. */
export function gravityOf(stepPpt: number): number {
  return (specificGravity(35.5, '25/25') - specificGravity(34.5, '25/25')) * stepPpt;
}

/** "0.66 ppt (0.0005 in specific gravity)": the pace in words, gravity beside it. */
export const salinityPaceWords = { up: words(up), down: words(down) } as const;

function words(ppt: number): string {
  return `${ppt} ppt (${fixed(gravityOf(ppt), 4)} in specific gravity)`;
}
