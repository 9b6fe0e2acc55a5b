import { Problem } from '../problem.ts';
import { WEEKDAY } from '../weekday.ts';
import { say } from '../wording/say.ts';

/** Words that mean two things, and what to ask back in their place. */
const DOUBTFUL: readonly (readonly [RegExp, readonly string[]])[] = [
  [/\bbi-?weekly\b/i, ['twice a week', 'every 2 weeks']],
  [/\bbi-?monthly\b/i, ['every 2 weeks', 'every 2 months']],
  [/\bbi-?(?:annual(?:ly)?|ennial(?:ly)?|yearly)\b/i, ['twice a year', 'every 2 years']],
  [
    new RegExp(String.raw`\b(?:every|each) (?:second|2nd) (${WEEKDAY})(?! (?:of|in|every|each)\b)`, 'i'),
    ['every other $1', 'second $1 of every month'],
  ],
  [
    new RegExp(String.raw`\b(?:every|each) (?:third|3rd) (${WEEKDAY})(?! (?:of|in|every|each)\b)`, 'i'),
    ['every 3 weeks on $1', 'third $1 of every month'],
  ],
];

/** @throws Problem where a repeat can mean two things; `choices` are whole texts, one for each meaning. */
export function askBack(given: string, field: string): void {
  for (const [pattern, instead] of DOUBTFUL) {
    if (!pattern.test(given)) continue;
    const choices = instead.map((words) => given.replace(pattern, words));
    throw new Problem(say('parse.twoMeanings'), { field, given, choices });
  }
  if (!/\bbetween\b/i.test(given)) return;
  throw new Problem(say('parse.noBetween'), {
    field,
    given,
    hint: say('parse.hintFirstDay'),
  });
}
