import { isSpoon } from './kinds-of-said.ts';
import type { Said } from './said.ts';
import type { Scanned } from './tokens.ts';

/** A powder and the water it goes into, as texts for `readQuantity`: "2 tsp" in "5 l". */
interface PowderInWater {
  readonly powder: string;
  readonly water: string;
}

/** "per gallon", "in each litre": one of it, without a number. */
const PER_ONE =
  /^[^.,;?!]{0,24}?\b(?:per|to|in|a|an|each|every|\/)\s*(?:a|an|the|each|every)?\s*(l|lit\w*|gal\w*)\b/;

/** How strong a mix is, where spoons or grams of it and the water were said; undefined where one is missing. */
export function powderInWater({ text }: Scanned, said: readonly Said[]): PowderInWater | undefined {
  const powder = said.find(
    ({ number, part }) =>
      part !== 'none' &&
      (number.kinds.includes('mass') || isSpoon(number.unit)) &&
      number.everyDays === undefined,
  );
  if (powder === undefined) return undefined;
  const one = PER_ONE.exec(text.slice(powder.number.end, powder.number.end + 48))?.[1];
  const water = said.find(
    ({ part, number }) =>
      number.start > powder.number.end &&
      number.kinds.includes('volume') &&
      !isSpoon(number.unit) &&
      (part === 'strength' || part === 'part'),
  );
  if (water !== undefined) return { powder: powder.text, water: water.text };
  return one === undefined
    ? undefined
    : { powder: powder.text, water: `1 ${one.startsWith('l') ? 'l' : 'gal'}` };
}
