import { MAX_MESSAGE_LENGTH } from '../../core/message-length.ts';
import { Problem } from '../../core/problem.ts';
import { findPhrase } from '../../core/schedule/phrase.ts';
import { piecesOf, readRepeats } from '../../core/words/repeats.ts';
import { readRepeat } from '../../core/words/repeat.ts';
import type { Heard } from '../../core/words/hear.ts';
import { answer, type Answer, type Fact } from '../answer.ts';
import { action } from '../calls.ts';
import type { OwnContext } from '../command.ts';
import { planOf, setReminder } from '../remind/set.ts';
import { readBack, severalAnswer } from '../remind/several.ts';
import { readWishText } from '../remind/wish-text.ts';
import { zoneOf } from '../zone.ts';
import { says, type Intent } from './intent.ts';

const ME = /\b(?:please )?(?:can you |could you )?remind me\b(?: to\b| about\b| of\b)?/i;
const SET = /\bset (?:me )?(?:a )?reminders?(?: to\b| for\b| of\b)?/i;
/** "water change reminder every 2 weeks". */
const NOUN = /\breminders?\b(?: for\b| to\b)?/i;
const DOUBTFUL = /\bbi-?(?:weekly|monthly|annual(?:ly)?|yearly)\b/i;
/** Parts that repeat make a list of wishes. */
const LIST = 3;

/** "remind me to test alk every other saturday 9am", or a list of what is to be done how often. */
export const remindIntent: Intent = (heard, context) => {
  const { given } = heard;
  const asks =
    says(heard, 'remind me', 'set (?:me )?(?:a )?reminders?') ||
    (NOUN.test(given) && (repeatsIn(given) > 0 || DOUBTFUL.test(given)));
  if (!asks && !isList(heard)) return undefined;
  const text = given.replace(ME, ' ').replace(SET, ' ').replace(NOUN, ' ').trim();
  if (context.keep === undefined) return howTo(text, context.nowMs);
  const isMany = isList(heard) || repeatsIn(text) > 1;
  return asking(text, () => (isMany ? many(given, context) : one(given, context)));
};

function many(text: string, context: OwnContext): Answer {
  return severalAnswer({ text: text.replace(ME, ' ').slice(0, MAX_MESSAGE_LENGTH) }, context);
}

/** Read with its "remind me", so that a question asked back is a whole sentence. */
function one(text: string, context: OwnContext): Answer {
  const tank = context.keep?.tankInUse();
  const zone = zoneOf(context, tank);
  const repeat = readRepeat(text, { field: 'question', nowMs: context.nowMs, zone });
  const words = repeat.rest.replace(ME, ' ').replace(SET, ' ').replace(NOUN, ' ').trim();
  return setReminder({ ...readWishText(words, 'question'), tank, zone, repeat }, context, []);
}

/** Questions asked back as answers: whole sentences to choose from; and the zone, which is set by a command. */
function asking(text: string, run: () => Answer): Answer {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    if (error.field === 'text' && error.choices.length > 0) return whichOf(error);
    if (error.field !== 'zone') throw error;
    return answer({
      headline: error.message,
      steps: [
        'Choose one, or name yours: /remind several text:... zone:Europe/Berlin. It is kept from then on.',
      ],
      next:
        text.length > MAX_MESSAGE_LENGTH
          ? []
          : error.choices.map((zone) => action(zone, 'remind several', { text, zone })),
    });
  }
}

/** Each choice is a whole text. */
function whichOf({ message, given = '', choices }: Problem): Answer {
  return answer({
    headline: message,
    read: [`"${given}" in what you wrote`],
    next: choices.map((text) => action(text.slice(0, 80), 'remind several', { text })),
  });
}

/** Where nothing of the member's may be touched: how to set it. */
function howTo(text: string, nowMs: number): Answer {
  const line =
    'Set it with /remind task text:change filter floss when:every saturday 9am, or /remind test of:alkalinity when:...';
  return answer({
    headline: 'Reminders are between you and me: set it with /remind, or ask me in a direct message.',
    facts: readBacks(text, nowMs),
    steps: [line, 'Several at once: /remind several. The usual tests of your tank: /remind plan.'],
    next: [
      ...(repeatsIn(text) > 0 && text.length <= MAX_MESSAGE_LENGTH
        ? [action('Set what I wrote', 'remind several', { text })]
        : []),
      action('The usual tests', 'remind plan', {}),
    ],
  });
}

/** How each part is read, by the clock of UTC; none where a part must be asked back. */
function readBacks(text: string, nowMs: number): readonly Fact[] {
  const zone = 'UTC';
  try {
    return readRepeats(text, { field: 'text', nowMs, zone })
      .map((repeat) => planOf({ ...readWishText(repeat.rest, 'text'), tank: undefined, zone, repeat }))
      .map((plan) => readBack(plan, nowMs));
  } catch (error) {
    if (error instanceof Problem) return [];
    throw error;
  }
}

/** "want: floss every sat, water change every other sat, ...": several repeats, no numbers of a tank, no question. */
function isList({ given, mentions }: Heard): boolean {
  const measured = mentions.some(({ kinds }) => kinds.some((kind) => kind !== 'days' && kind !== 'bare'));
  return !measured && !given.includes('?') && given.length <= MAX_MESSAGE_LENGTH && repeatsIn(given) >= LIST;
}

function repeatsIn(text: string): number {
  try {
    return piecesOf(text, 'question').filter((piece) => findPhrase(piece, 'question') !== undefined).length;
  } catch (error) {
    if (error instanceof Problem) return 0;
    throw error;
  }
}
