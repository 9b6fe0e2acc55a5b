import type { CoralEntry } from '../../core/corals/entry.ts';
import { brokenLine } from '../../core/words/broken-line.ts';
import { answer, type Answer } from '../answer.ts';
import { feedingLine, lightLine } from './about-lines.ts';
import { fullName } from './asked-kind.ts';
import { shortFirst } from './short-first.ts';
import { hazardCautions } from './hazard-lines.ts';

/** So many letters stand behind the name in the headline. */
const MOST_FIRST = 100;

/** What a coral eats, and how it is fed. */
export function feedingAnswer(name: string, entry: CoralEntry): Answer {
  const { label, value } = feedingLine(entry);
  const [first, more] = brokenLine(value, MOST_FIRST);
  return answer({
    headline: `${entry.names.common[0]}: ${first}.`,
    read: [`${name} as ${fullName(entry)}`],
    facts: shortFirst([...(more === '' ? [] : [{ label, value: more }]), lightLine(entry)]),
    steps: [
      'Pumps off or low while it takes the food, and lift out what is left after some minutes.',
      'More food is more nitrate and phosphate: /coral feed says how much at most.',
    ],
    dangers: hazardCautions([entry]),
  });
}
