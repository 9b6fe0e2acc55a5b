import { findCompound } from '../../core/dosing/compound.ts';
import { is } from '../../core/words/mention.ts';
import { swapCommand } from '../dose/swap.ts';
import { call } from './call.ts';
import { says, type Intent } from './intent.ts';

const SWAPS = [
  'instead',
  'swap',
  'replace',
  'twice',
  'half',
  'double',
  'recipe',
  'strong',
  'stronger',
  'equal',
  'same as',
] as const;

/** "the recipe says 100 g baking soda, I put in 50 g soda ash": grams of one that equal grams of the other. */
export const swapIntent: Intent = (heard, context) => {
  const named = new Set(
    heard.compounds.flatMap(({ name }) => {
      const found = findCompound(name);
      return found !== undefined && 'atoms' in found ? [found.name] : [];
    }),
  );
  const pair = ['sodium bicarbonate', 'sodium carbonate'] as const;
  if (!pair.every((name) => named.has(name)) || !says(heard, ...SWAPS)) return undefined;
  const [recipe, used] = heard.mentions.filter((m) => is(m, 'mass')).map(({ text }) => text);
  return call(swapCommand, { with: pair[0], instead: pair[1], amount: recipe, used }, context);
};
