import { findCompound } from '../../../core/dosing/compound.ts';
import type { Frame } from '../../../core/language/frame.ts';
import { met, type Met } from '../../../core/language/met.ts';
import type { Answer } from '../../answer.ts';
import type { OwnContext } from '../../command.ts';
import { swapCommand } from '../../dose/swap.ts';
import { call } from '../../called.ts';

/** Two salts that do the same, and one asked for in place of the other. */
export function isSwap({ slots: { salts = [] }, reading: { scanned } }: Frame): boolean {
  const [first, second] = distinct(salts);
  if (first === undefined || second === undefined) return false;
  const classes: readonly Met[] = [
    'deeds.swaps',
    'manner.avoided',
    'deeds.compares',
    'deeds.converts',
    'sums.recipe',
    'sums.half',
  ];
  return met(scanned, ...classes, 'sums.double', 'sums.strength');
}

/** "the recipe says 100 g baking soda, I put in 50 g soda ash": grams of one that equal grams of the other. */
export function swapped({ slots }: Frame, context: OwnContext): Answer | undefined {
  const [from, to] = distinct(slots.salts ?? []);
  if (from === undefined || to === undefined) return undefined;
  const [amount, used] = [slots.strength, ...(slots.amounts ?? [])].filter((text) => text !== undefined);
  return call(swapCommand, { with: from, instead: to, amount, used }, context);
}

/** The words for different compounds, each once. */
function distinct(words: readonly string[]): readonly string[] {
  const seen = new Set<string>();
  return words.filter((word) => {
    const found = findCompound(word);
    const forms = found === undefined ? [] : 'name' in found ? [found] : found;
    const key = forms.map(({ name }) => name).join();
    if (key === '' || seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}
