import { coralsIn } from '../../../core/words/corals.ts';
import { compareCoralsCommand } from '../../coral/compare.ts';
import { call } from '../call.ts';
import { says, type Intent } from '../intent.ts';
import { isTrouble } from './named.ts';

const COMPARES = [
  'compare[ds]?',
  'comparison',
  'vs',
  'versus',
  'differen(?:ce|t|ces)',
  'easier',
  'hardier',
  'better',
  'tougher',
  'aggressive',
  'compatible',
] as const;

/** "torch vs hammer", "which is easier, acan or duncan": two or three kinds side by side. */
export const compareIntent: Intent = (heard, context) => {
  if (heard.said.length > 0 || isTrouble(heard) || !says(heard, ...COMPARES)) return undefined;
  const [a, b, c] = coralsIn(heard.text);
  if (a === undefined || b === undefined) return undefined;
  return call(compareCoralsCommand, { a: a.name, b: b.name, c: c?.name }, context);
};
