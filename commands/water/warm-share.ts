import { Problem } from '../../core/problem.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { shareOf, type Water } from '../waterchange/pour.ts';
import { say } from '../../core/wording/say.ts';

interface Texts {
  readonly share?: string | undefined;
  readonly amount?: string | undefined;
  readonly volume?: string | undefined;
}

/** The part of the whole that goes in: changed for what was there, or added to it; undefined where none was said. */
export function fractionOf(texts: Texts, water: Water, isTank: boolean): number | undefined {
  const { share, amount, volume } = texts;
  if (amount !== undefined && share === undefined && volume === undefined)
    throw new Problem(say('water.howMuchWaterThere'), { field: 'volume' });
  if (isTank || amount === undefined || share !== undefined) return shareOf(texts, water);
  const addedL = readQuantity('volume', amount, { field: 'amount' }).value;
  return addedL / (addedL + water.volumeL);
}
