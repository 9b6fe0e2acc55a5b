import { z } from 'zod';
import { kinds, type Kind } from '../core/language/kinds.ts';
import { MAX_MESSAGE_LENGTH } from '../core/message-length.ts';
import { Problem } from '../core/problem.ts';
import { say } from '../core/wording/say.ts';
import { withNamedSources, type Answer } from './answer.ts';
import { answerMessage, type Taken } from './ask/answer-message.ts';
import { defineCommand, readerIn, type Asking } from './command.ts';
import { textOption } from './options.ts';

/**
 * Answers a message in plain words, asks exactly one question back, or offers what it may have meant. Without a text it
 * takes the last message of the talk anew.
 *
 * @throws Problem for what the member can put right.
 */
export function ask(text: string, asking: Asking, taken: Taken = {}): Answer {
  const context = { ...asking, keep: asking.keep };
  const isAnew = text.trim() === '';
  const said = isAnew ? (asking.talk?.before?.last ?? '') : text;
  if (said === '') {
    throw new Problem(say('ask.messageGone'), {
      field: 'question',
      hint: say('ask.sendOnceMore'),
    });
  }
  const given = withNamedSources(answerMessage(said, { ...taken, isAnew }, readerIn(asking), context));
  return said.length <= MAX_MESSAGE_LENGTH
    ? given
    : { ...given, read: ['only the beginning of your message', ...given.read] };
}

/** The kinds in an option of ours. */
function kindsIn(text: string | undefined): readonly Kind[] {
  return (text ?? '').split(' ').flatMap((word) => kinds.filter((kind) => kind === word));
}

const options = z.strictObject({
  question: textOption('Your question with its numbers and units', { max: MAX_MESSAGE_LENGTH }).optional(),
  as: textOption('Take it as this kind of question (buttons fill this in)', { max: 40 }).optional(),
  not: textOption('It was none of these (buttons fill this in)', { max: 200 }).optional(),
  parts: textOption('What its numbers are (buttons fill this in)', { max: 200 }).optional(),
});

function run({ question, as, not, parts }: z.infer<typeof options>, asking: Asking): Answer {
  const [kind] = kindsIn(as);
  return ask(question ?? '', asking, {
    ...(kind === undefined ? {} : { as: kind }),
    not: kindsIn(not),
    ...(parts === undefined ? {} : { parts }),
  });
}

export const askCommand = defineCommand({
  path: ['ask'],
  summary: 'Ask in your own words: what it reads, what it should be, how much water',
  example: '/ask question:raise alk 7.2 to 8.4 in 75 gal with soda ash',
  options,
  run: (input, context): Answer => run(input, context),
  own: {
    when: (_, { hasTank, isShared }) => hasTank || !isShared,
    run: (input, context): Answer => run(input, context),
  },
});
