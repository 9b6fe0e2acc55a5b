import { Problem } from '../../core/problem.ts';
import { findPhrase } from '../../core/schedule/phrase.ts';
import { wishWords } from '../../core/words/remind-lead.ts';
import { piecesOf, readRepeats } from '../../core/words/repeats.ts';
import { readRepeat } from '../../core/words/repeat.ts';
import { say } from '../../core/wording/say.ts';
import { answer, type Answer, type Fact } from '../answer.ts';
import { action } from '../calls.ts';
import type { OwnContext } from '../command.ts';
import { inSaidZone } from './said-zone.ts';
import { planOf, setReminder } from './set.ts';
import { MAX_MESSAGE_LENGTH } from '../../core/message-length.ts';
import { readBack, severalAnswer } from './several.ts';
import { readWishText } from './wish-text.ts';

/** "remind me to test alk every other saturday 9am", or several wishes with a time each. */
export function remindFromWords(given: string, context: OwnContext): Answer {
  const text = wishWords(given);
  if (context.keep === undefined) return howTo(text, context.nowMs);
  return asking(text, () => (repeatsIn(text) > 1 ? many(text, context) : one(text, context)));
}

function many(text: string, context: OwnContext): Answer {
  return severalAnswer({ text: text.slice(0, MAX_MESSAGE_LENGTH) }, context);
}

/** Read as "remind me ...", so that a question asked back is a whole sentence. */
function one(given: string, context: OwnContext): Answer {
  const tank = context.keep?.tankInUse();
  const { text, zone, ...asked } = inSaidZone(given, undefined, context, tank);
  const repeat = readRepeat(`remind me ${text}`, { field: 'question', nowMs: context.nowMs, zone });
  const words = repeat.rest === '' ? UNSAID : repeat.rest;
  return setReminder({ ...readWishText(words, 'question'), tank, zone, repeat }, context, asked);
}

/** The text of a reminder of which only the time was said. */
const UNSAID = 'look at the tank';

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
      tone: 'question',
      next:
        text.length > MAX_MESSAGE_LENGTH
          ? []
          : [
              ...error.choices.map((zone) => action(zone, 'remind several', { text, zone })),
              action(say('remind.otherZone'), 'remind several', { text }, ['zone']),
            ],
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
    'Set it: /remind task text:change filter floss when:every saturday 9am, or /remind test of:alkalinity';
  return answer({
    headline: 'Reminders are between you and me: set it with /remind, or ask me in a direct message.',
    facts: readBacks(text, nowMs),
    steps: [line, 'Several at once: /remind several. The usual tests of your tank: /remind plan.'],
    next: [
      ...(repeatsIn(text) > 0 && text.length <= MAX_MESSAGE_LENGTH
        ? [action(say('remind.setWhatIWrote'), 'remind several', { text })]
        : []),
      action(say('remind.usualTests'), 'remind plan', {}),
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

/** How many of its parts repeat. */
export function repeatsIn(text: string): number {
  try {
    return piecesOf(text, 'text').filter((piece) => findPhrase(piece, 'text') !== undefined).length;
  } catch (error) {
    if (error instanceof Problem) return 0;
    throw error;
  }
}
