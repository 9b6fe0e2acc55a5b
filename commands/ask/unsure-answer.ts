import type { Frame } from '../../core/language/frame.ts';
import { isLevelPart, type PartName } from '../../core/language/parts.ts';
import { choiceText, type Choice, type Unsure } from '../../core/language/unsure.ts';
import { parameterIds, parameter } from '../../core/water/parameter.ts';
import { say } from '../../core/wording/say.ts';
import { answer, type Answer, type NextAction } from '../answer.ts';
import { action } from '../calls.ts';
import { heardOf } from './heard.ts';
import { unclearDangers } from './unclear-danger.ts';

/** What a number may be, on a button. */
const PARTS: Readonly<Record<PartName, string>> = {
  now: 'what it reads now',
  was: 'what it was before',
  wanted: 'what it should be',
  change: 'a rise or fall',
  rate: 'so much a day or week',
  amount: 'an amount of a substance',
  strength: 'how strong something is',
  system: 'the water in the whole tank',
  part: 'the water of one vessel',
  changed: 'the water changed',
  other: 'a reading of other water',
  limit: 'a limit',
  target: 'what it should be',
  length: 'a size or distance',
  span: 'a stretch of time',
  moment: 'a time or date',
  setting: 'a setting',
  light: 'light at a place',
  othertemp: 'warmth of something else',
  none: 'something else',
};

/** The one question about a number whose part hangs in the balance; each button works the message out with it. */
export function unsureAnswer({ kind, slots, reading }: Frame, { at, text, choices }: Unsure): Answer {
  const button = (choice: Choice): NextAction =>
    action(phraseOf(choice), 'ask', { as: kind, parts: withMore(reading.chosen, choiceText(at, choice)) });
  const heard = heardOf(slots);
  return answer({
    tone: 'question',
    headline: say('ask.whatIsThisNumber', { text }),
    read: heard === '' ? [] : [heard],
    dangers: unclearDangers([kind]),
    next: [...choices.filter(({ part }) => part !== 'none'), NEITHER].map(button),
  });
}

const NEITHER: Choice = { part: 'none', of: 'nothing' };

function withMore(chosen: string | undefined, more: string): string {
  return chosen === undefined ? more : `${chosen} ${more}`;
}

function phraseOf({ part, of }: Choice): string {
  const id = parameterIds.find((each) => each === of);
  return id === undefined || !isLevelPart(part) ? PARTS[part] : `${parameter(id).label}: ${PARTS[part]}`;
}
