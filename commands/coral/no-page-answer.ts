import type { Found } from '../../core/corals/find.ts';
import { say } from '../../core/wording/say.ts';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { noPageWords, tellingName } from './asked-kind.ts';

/** A real genus without a page is said to be one, and relatives are offered. */
export function noPageAnswer(name: string, found: Extract<Found, { kind: 'no page' }>): Answer {
  return answer({
    headline: noPageWords(found),
    read: [`"${name}" as a genus of stony corals`],
    steps: [
      found.near.length === 0
        ? 'Ask whoever sold or gave it for its species, its depth and the light it had.'
        : say('coral.nearestRelative'),
    ],
    next: found.near.map((entry) =>
      action(entry.names.common[0], 'coral about', { coral: tellingName(entry) }),
    ),
  });
}
