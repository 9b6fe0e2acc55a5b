import { significant, span } from '../../core/quantity/format.ts';
import type { Fact } from '../answer.ts';
import { teaspoonOf } from './asked-amount.ts';
import type { AskedCompound } from './asked.ts';

/** What a spoon of it weighs, where that is roughly known. */
export function spoonFact({ forms }: AskedCompound): Fact | undefined {
  const each = teaspoonOf(forms);
  if (each === undefined) return undefined;
  return {
    label: 'A level teaspoon',
    value: `${each.join(' to ')} g; 3 are a tablespoon (common practice, no source): weigh it to know`,
  };
}

/** Less than this of a teaspoon cannot be measured with one. Own choice. */
const LEAST_SPOON = 0.2;

/** So many grams in spoons, or why they cannot be told in them. */
export function spoonWords(compound: AskedCompound, grams: number): string {
  const [, most] = teaspoonOf(compound.forms) ?? [];
  if (most === undefined) return 'no spoon of it has a known weight: weigh it';
  return grams / most < LEAST_SPOON
    ? 'too little for a spoon: weigh it'
    : `roughly ${levelSpoons(compound, grams, grams) ?? ''}`;
}

/**
 * Level teaspoons of so many grams, least and most; undefined where a spoonful is not known. Check: 25 g of calcium chloride
 * at 3.5 to 5 g -> 5 to 7.1; 18 to 20 g of lime at 2.5 to 3.5 g -> 5.1 to 8.
 */
export function levelSpoons({ forms }: AskedCompound, lowG: number, highG: number): string | undefined {
  const each = teaspoonOf(forms);
  return each && `${span(significant(lowG / each[1], 2), significant(highG / each[0], 2))} level teaspoons`;
}
