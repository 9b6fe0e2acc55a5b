import { findCorals } from '../../../core/corals/find.ts';
import { unpagedGenera } from '../../../core/corals/unpaged.ts';
import { answer } from '../../answer.ts';
import { noPageWords, tellingName } from '../../coral/asked-kind.ts';
import type { Intent } from '../intent.ts';
import { isTrouble } from './named.ts';

/** "how much light for a coelastrea": a real genus without a page is said to be one, and relatives are offered. */
export const noPageIntent: Intent = (heard) => {
  if (isTrouble(heard) || heard.said.length > 0) return undefined;
  const word = (heard.text.match(/[a-z]+/g) ?? []).find((one) => unpagedGenera.has(one));
  const found = word === undefined ? undefined : findCorals(word);
  if (found?.kind !== 'no page') return undefined;
  return answer({
    headline: noPageWords(found),
    read: [`"${word}" as a genus of stony corals`],
    steps: [
      found.near.length === 0
        ? 'Ask whoever sold or gave it for its species, its depth and the light it had.'
        : 'Do you mean one of its nearest relatives here? They may need something else.',
    ],
    next: found.near.map((entry) => ({
      label: entry.names.common[0],
      command: 'coral about',
      input: { coral: tellingName(entry) },
    })),
  });
};
