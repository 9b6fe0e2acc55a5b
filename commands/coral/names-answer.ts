import type { NamedCoral } from '../../core/corals/named.ts';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { spotLine } from './about-lines.ts';
import { fullName, tellingName } from './asked-kind.ts';
import { namingRead } from './naming.ts';

/** Kinds told of one name. */
const MOST_KINDS = 5;

/** What names mean today: the kinds each can stand for, and what else they are called. */
export function namesAnswer(named: readonly NamedCoral[]): Answer {
  const entries = [...new Set(named.flatMap((one) => one.entries))].slice(0, MOST_KINDS);
  const said = named.map(
    ({ name, entries: kinds }) => `"${name}" is ${kinds.slice(0, MOST_KINDS).map(fullName).join(', or ')}`,
  );
  return answer({
    headline: `${said.join('; ')}.`,
    facts: entries.flatMap((entry) => [
      ...namingRead(entry).map((value) => ({ label: entry.names.common[0], value })),
      ...(entries.length > 1 ? [{ ...spotLine(entry), label: `${entry.names.common[0]}, spot` }] : []),
    ]),
    cautions: ['I see no pictures: a close-up by white light, shown to keepers, tells more than a name.'],
    sources: ['practice', 'memory'],
    next: entries.map((entry) =>
      action(`About ${entry.names.common[0]}`, 'coral about', { coral: tellingName(entry) }),
    ),
  });
}
