import { z } from 'zod';
import { MAX_MESSAGE_LENGTH } from '../core/message-length.ts';
import { symptomCard, type SymptomId } from '../core/care/symptoms/cards.ts';
import type { Answer } from './answer.ts';
import { defineCommand, readerIn, type OwnContext } from './command.ts';
import { placedOption } from './coral/asked-placed.ts';
import { quantityOption, textOption } from './options.ts';
import { ANSWERS, nextQuestion, questionAnswer, wholeAnswer } from './triage/card-answer.ts';
import { readChoice } from './triage/choice.ts';
import { evidenceOf } from './triage/evidence.ts';
import { groupMenu, symptomAction, symptomsMenu, type Kept } from './triage/menu.ts';
import { symptomOf } from './triage/of-reading.ts';
import { readSeen } from './triage/seen.ts';
import { firstAidFor, isAlarm, mayBeAlarm } from './urgent/in-words.ts';
import { readOrName } from './urgent/not-used.ts';
import { takingAnything } from './urgent/taking-anything.ts';

interface TriageInput {
  readonly seen?: string | undefined;
  readonly one?: string | undefined;
  readonly two?: string | undefined;
  readonly coral?: string | undefined;
  readonly volume?: string | undefined;
}

const strict = defineCommand({
  path: ['triage'],
  summary: 'Something looks wrong: a few questions, then likely causes and the first safe step',
  example: '/triage seen:polyps stay closed',
  private: true,
  options: z.strictObject({
    seen: textOption('What you see, in your own words; left out, you choose from a list', {
      max: MAX_MESSAGE_LENGTH,
    }).optional(),
    one: textOption('Your answer to the first question, or: not sure').optional(),
    two: textOption('Your answer to the second question, or: not sure').optional(),
    coral: placedOption().optional(),
    volume: quantityOption('volume', 'Net water in the whole system', 'volume').optional(),
  }),
  run: triage,
});

/** First aid is answered whatever was typed beside it, as in /urgent. */
export const triageCommand = takingAnything(strict);

function triage(input: TriageInput, context: OwnContext): Answer {
  const { seen } = input;
  const kept: Kept = input.coral === undefined ? {} : { coral: input.coral };
  if (seen === undefined) return groupMenu(kept);
  const meant = readSeen(seen);
  switch (meant.kind) {
    case 'one':
      return oneSymptom(meant.id, input, kept, context);
    case 'group':
      return symptomsMenu(meant.group, kept);
    case 'words':
      return inWords(seen, input, kept, context);
  }
}

/** What was seen in the member's own words: a hurt person and a tank in danger come first. */
function inWords(seen: string, input: TriageInput, kept: Kept, context: OwnContext): Answer {
  const { read, thresholds } = readerIn(context);
  const reading = read(seen);
  if (isAlarm(reading, thresholds.answer)) return firstAidFor(reading, { volume: input.volume });
  const { first, others } = symptomOf(reading);
  if (first === undefined || mayBeAlarm(reading)) return groupMenu(kept, seen);
  const given = oneSymptom(first, input, kept, context);
  const rather = others.slice(0, 2).map((id) => symptomAction(id, kept));
  return { ...given, next: [...given.next, ...rather] };
}

/** Asks what is not answered yet, in order; then the whole card. */
function oneSymptom(id: SymptomId, input: TriageInput, kept: Kept, context: OwnContext): Answer {
  const { questions } = symptomCard(id);
  const given = ANSWERS.slice(0, questions.length).map((name) => input[name]);
  const open = given.indexOf(undefined);
  const texts = given.slice(0, open < 0 ? given.length : open).filter((text) => text !== undefined);
  const left: string[] = [];
  const evidence =
    readOrName('coral', input.coral, (coral) => evidenceOf(context, coral), left) ?? evidenceOf(context);
  const asked = {
    id,
    answers: texts.map((text, place) => {
      const question = questions[place];
      const name = ANSWERS[place] ?? 'one';
      return question === undefined
        ? undefined
        : readOrName(name, text, () => readChoice(question, text, name), left);
    }),
    typed: Object.fromEntries(texts.map((text, place) => [ANSWERS[place] ?? 'one', text])),
    kept,
    evidence,
    volume: input.volume,
  };
  const question = nextQuestion(asked);
  const card = question === undefined ? wholeAnswer(asked) : questionAnswer(asked, question);
  return { ...card, unused: [...left, ...card.unused] };
}
