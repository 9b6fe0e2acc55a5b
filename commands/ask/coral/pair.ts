import type { NamedCoral } from '../../../core/corals/named.ts';
import { pairAnswer } from '../../coral/pair-answer.ts';
import type { Intent } from '../intent.ts';
import { lengthIn } from './lengths.ts';
import { pairIn } from './pair-named.ts';

/** "Can torch and hammer sit next to each other?": what is known of the two, and how much room they want. */
export const pairIntent: Intent = (heard) => {
  const pair = pairIn(heard);
  if (pair === undefined || (isZoanthid(pair[0]) && isZoanthid(pair[1]))) return undefined;
  return pairAnswer(...pair, lengthIn(heard));
};

function isZoanthid({ entries }: NamedCoral): boolean {
  return entries[0].group === 'zoanthid';
}
