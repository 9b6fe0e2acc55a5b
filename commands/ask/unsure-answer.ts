import type { Frame } from '../../core/language/frame.ts';
import { isLevelPart } from '../../core/language/parts.ts';
import { choiceText, type Choice, type Unsure } from '../../core/language/unsure.ts';
import { parameterIds, parameter } from '../../core/water/parameter.ts';
import { say } from '../../core/wording/say.ts';
import { answer, type Answer, type NextAction } from '../answer.ts';
import { action } from '../calls.ts';
import { heardOf } from './heard.ts';
import { unclearDangers } from './unclear-danger.ts';

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

/** What a number may be, on a button. */
function phraseOf({ part, of }: Choice): string {
  const id = parameterIds.find((each) => each === of);
  const words = say(`ask.part-${part}`);
  return id === undefined || !isLevelPart(part)
    ? words
    : say('ask.partOf', { parameter: parameter(id).label, part: words });
}
