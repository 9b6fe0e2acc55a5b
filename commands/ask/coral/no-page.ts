import { findCorals } from '../../../core/corals/find.ts';
import { unpagedGenera } from '../../../core/corals/unpaged.ts';
import { noPageAnswer } from '../../coral/no-page-answer.ts';
import type { Intent } from '../intent.ts';
import { isTrouble } from './named.ts';

/** "how much light for a coelastrea": a real genus without a page is said to be one, and relatives are offered. */
export const noPageIntent: Intent = (heard) => {
  if (isTrouble(heard) || heard.said.length > 0) return undefined;
  const word = (heard.text.match(/[a-z]+/g) ?? []).find((one) => unpagedGenera.has(one));
  if (word === undefined) return undefined;
  const found = findCorals(word);
  return found.kind === 'no page' ? noPageAnswer(word, found) : undefined;
};
