import type { NamedCoral } from '../../core/corals/named.ts';
import { say } from '../../core/wording/say.ts';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { shortLimits } from '../short/limits.ts';
import { spotLine } from './about-lines.ts';
import { fullNames, tellingName } from './asked-kind.ts';
import { namingRead } from './naming.ts';
import { shortFirst } from './short-first.ts';

/** Kinds told of one name. */
const MOST_KINDS = 5;
/** So many letters of their names stand in the headline. */
const SAID_LETTERS = 100;

/** What names mean today: the kinds each can stand for, and what else they are called. */
export function namesAnswer(named: readonly NamedCoral[]): Answer {
  const entries = [...new Set(named.flatMap((one) => one.entries))].slice(0, MOST_KINDS);
  const said = named.map(
    ({ name, entries: kinds }) => `"${name}" is ${fullNames(kinds, SAID_LETTERS / named.length)}`,
  );
  return answer({
    headline: `${said.join('; ')}.`,
    facts: shortFirst(
      entries.flatMap((entry) => [
        ...(entries.length > 1 ? [{ ...spotLine(entry), label: `${entry.names.common[0]}, spot` }] : []),
        ...namingRead(entry).map((value) => ({ label: entry.names.common[0], value })),
      ]),
      shortLimits.page,
    ),
    isList: true,
    cautions: ['I see no pictures: a close-up by white light, shown to keepers, tells more than a name.'],
    sources: ['practice', 'memory'],
    next: entries.map((entry) =>
      action(say('coral.about', { coral: entry.names.common[0] }), 'coral about', {
        coral: tellingName(entry),
      }),
    ),
  });
}
