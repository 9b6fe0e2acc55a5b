import type { Heard } from '../../core/words/hear.ts';
import type { Answer } from '../answer.ts';
import { remarked, type Remark } from '../dose/remarks.ts';
import { says } from './intent.ts';

const words: Readonly<Record<Remark, readonly string[]>> = {
  'dosing stopped': [
    'dosing off',
    'stopped dosing',
    'stop dosing',
    'turned off my dos(?:er|ing)',
    'turned my dosing off',
  ],
  'at once': ['dump', 'tonight', 'tonite', 'all at once', 'in one go', 'right now'],
  'amount of another': [
    '(?:mate|friend|buddy|guy|someone|neighbou?r)[^.?!]{0,40}(?:used?|uses|dos\\w+|adds?|added|puts?)',
  ],
  'calcium reactor': ['calcium reactor', 'reactor', 'gas bottle', 'co2 bottle'],
  vinegar: ['vinegar'],
};

/** Adds to an answer what the sentence calls for besides its numbers. */
export function withRemarks(heard: Heard, given: Answer): Answer {
  const said = Object.entries(words).flatMap(([name, list]) =>
    says(heard, ...list) ? [name as Remark] : [],
  );
  return remarked(given, said);
}
