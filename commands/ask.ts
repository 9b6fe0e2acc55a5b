import { z } from 'zod';
import { Problem } from '../core/problem.ts';
import { goesOn } from '../core/words/goes-on.ts';
import { hear, MAX_WORDS_LENGTH, type Heard } from '../core/words/hear.ts';
import { withNamedSources, type Answer } from './answer.ts';
import { accidentIntent } from './ask/accident.ts';
import { batchIntent } from './ask/batch.ts';
import { disagreeIntent } from './ask/disagree.ts';
import { byLabelIntent } from './ask/by-label.ts';
import { changesSumIntent } from './ask/changes-sum.ts';
import { changeIntent, doneIntent, dripIntent, routineIntent } from './ask/change.ts';
import { bareRuleIntent, passedOnIntent } from './ask/claim.ts';
import { convertIntent } from './ask/convert.ts';
import { darkIntent } from './ask/dark.ts';
import { dailyIntent } from './ask/daily.ts';
import { amountIntent, effectIntent } from './ask/effect.ts';
import { doseIntent, limewaterBatchIntent, limewaterIntent, zeroNutrientsIntent } from './ask/dosing.ts';
import { hurtIntent, maybeHurtIntent } from './ask/hurt.ts';
import type { Intent } from './ask/intent.ts';
import { bandIntent, hoursIntent, luxIntent, raiseLightIntent } from './ask/light.ts';
import { lost } from './ask/lost.ts';
import { netVolumeIntent } from './ask/net-volume.ts';
import { newcomerIntent } from './ask/newcomer.ts';
import { overflowIntent } from './ask/overflow.ts';
import { paceIntent } from './ask/pace.ts';
import { peroxideIntent } from './ask/peroxide.ts';
import { placementIntents } from './ask/placement.ts';
import { ppbIntent } from './ask/ppb.ts';
import { primerIntent } from './ask/primer.ts';
import { readingIntent, readingsIntent, salinityJudgedIntent } from './ask/readings.ts';
import {
  adjustIntent,
  conductivityIntent,
  instrumentIntent,
  mixIntent,
  salinityIntent,
} from './ask/salinity.ts';
import { clockChangeIntent, howOftenIntent } from './ask/schedule.ts';
import { remindIntent } from './ask/remind.ts';
import { refusalIntent } from './ask/refusal.ts';
import { mainsIntent, subjectIntent } from './ask/subject.ts';
import { solutionIntent } from './ask/solution.ts';
import { swapIntent } from './ask/swap.ts';
import { symptomIntents } from './ask/symptom.ts';
import { questionIn, type Outcome, type Talk } from './ask/talk.ts';
import { thinIntent } from './ask/thin.ts';
import { twoKitsIntent } from './ask/two-kits.ts';
import { beyondIntent, firstAidIntent, urgentIntent } from './ask/urgent.ts';
import { useIntent } from './ask/use.ts';
import { usualIntent } from './ask/usual.ts';
import { defineCommand, type Asking, type OwnContext } from './command.ts';
import { notUsed } from './urgent/not-used.ts';
import { textOption } from './options.ts';
import { watchedKeep } from './watched-keep.ts';
import { guarded } from './ask/guards.ts';

/** Emergencies; people before animals. */
const aidIntents: readonly Intent[] = [hurtIntent, subjectIntent, urgentIntent];

/** What comes before anything else: its first line is the act. */
const emergencies: ReadonlySet<Intent> = new Set([
  ...aidIntents,
  refusalIntent,
  accidentIntent,
  firstAidIntent,
  beyondIntent,
  mainsIntent,
  maybeHurtIntent,
]);

/** Tried in this order: the particular before the general. The first that knows the question answers it. */
const intents: readonly Intent[] = [
  hurtIntent,
  subjectIntent,
  refusalIntent,
  accidentIntent,
  urgentIntent,
  mainsIntent,
  clockChangeIntent,
  howOftenIntent,
  remindIntent,
  darkIntent,
  ...placementIntents,
  overflowIntent,
  peroxideIntent,
  passedOnIntent,
  swapIntent,
  netVolumeIntent,
  twoKitsIntent,
  zeroNutrientsIntent,
  instrumentIntent,
  limewaterIntent,
  limewaterBatchIntent,
  routineIntent,
  dripIntent,
  luxIntent,
  raiseLightIntent,
  hoursIntent,
  ...symptomIntents,
  byLabelIntent,
  readingsIntent,
  useIntent,
  dailyIntent,
  solutionIntent,
  paceIntent,
  doseIntent,
  effectIntent,
  changeIntent,
  changesSumIntent,
  mixIntent,
  conductivityIntent,
  disagreeIntent,
  batchIntent,
  adjustIntent,
  ppbIntent,
  salinityJudgedIntent,
  salinityIntent,
  bandIntent,
  doneIntent,
  amountIntent,
  convertIntent,
  readingIntent,
  bareRuleIntent,
  usualIntent,
  primerIntent,
  newcomerIntent,
  maybeHurtIntent,
  thinIntent,
];

/**
 * Answers a question in plain words, asks exactly one back, or says what it can do with the numbers it saw. In a talk a
 * sentence may go on from the one before.
 *
 * @throws Problem for what the member can put right.
 */
export function ask(text: string, asking: Asking): Answer {
  const context = { ...asking, keep: asking.keep };
  if (text.length > MAX_WORDS_LENGTH) {
    const aid = firstOf(aidIntents, hear(text), context);
    if (aid !== undefined) return { ...aid, read: ['only the beginning of your message', ...aid.read] };
    throw new Problem('That is longer than I can read.', {
      field: 'question',
      limit: `at most ${MAX_WORDS_LENGTH} characters`,
    });
  }
  return asking.talk === undefined ? answered(text, context) : inTalk(asking.talk, text, context);
}

/**
 * What has acted is done with: nothing goes on from it, so nothing is done twice. What goes on from nothing that is
 * understood leaves the question before it to be gone on with.
 */
function inTalk(talk: Talk, text: string, context: OwnContext): Answer {
  const question = questionIn(talk, text, (tried) => outcomeOf(tried, context));
  const stands = talk.before === undefined || !goesOn(text) || outcomeOf(question, context).kind !== 'lost';
  let acted = false;
  try {
    const given = answered(
      question,
      watching(context, () => (acted = true)),
    );
    return question === text
      ? given
      : { ...given, read: [`with what you asked before: "${question}"`, ...given.read] };
  } finally {
    if (acted || stands) talk.remember(acted ? undefined : question);
  }
}

function watching(context: OwnContext, onWrite: () => void): OwnContext {
  const { keep } = context;
  return keep === undefined ? context : { ...context, keep: watchedKeep(keep, onWrite) };
}

function answered(text: string, context: OwnContext): Answer {
  const heard = hear(text);
  return withNamedSources(intended(heard, context) ?? lost(heard));
}

/** A number that another kind of question stumbles over takes no first aid away: it is named, and the card comes. */
function intended(heard: Heard, context: OwnContext): Answer | undefined {
  try {
    return firstOf(intents, heard, context);
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    const isAsked = error.choices.length > 0;
    const card = firstOf(
      isAsked ? [firstAidIntent] : [firstAidIntent, beyondIntent, ...symptomIntents],
      heard,
      context,
    );
    if (card === undefined) throw error;
    return { ...card, read: [notUsed(error.field, error.given ?? '', error), ...card.read] };
  }
}

function firstOf(tried: readonly Intent[], heard: Heard, context: OwnContext): Answer | undefined {
  for (const intent of tried) {
    const found = intent(heard, context);
    if (found !== undefined) return emergencies.has(intent) ? found : guarded(heard, found);
  }
  return undefined;
}

/** Thrown where finding out what a question means would have done what it asks for. */
class WouldAct extends Error {}

/** How a question would come out. Nothing is done to find out. */
function outcomeOf(text: string, context: OwnContext): Outcome {
  const stop = (): never => {
    throw new WouldAct(text);
  };
  try {
    const found = intended(hear(text), watching(context, stop));
    if (found === undefined) return { kind: 'lost', text: '' };
    return { kind: 'answered', text: JSON.stringify({ ...found, read: [] }) };
  } catch (error) {
    if (error instanceof Problem) return { kind: 'asked back', text: error.message };
    if (error instanceof WouldAct) return { kind: 'acts', text: '' };
    throw error;
  }
}

export const askCommand = defineCommand({
  path: ['ask'],
  summary: 'Ask in your own words: what it reads, what it should be, how much water',
  example: '/ask question:raise alk 7.2 to 8.4 in 75 gal with soda ash',
  options: z.strictObject({
    question: textOption('Your question with its numbers and units', { max: MAX_WORDS_LENGTH }),
  }),
  run: (input, context): Answer => ask(input.question, context),
  own: {
    when: (_, { hasTank, isServer }) => hasTank || !isServer,
    run: (input, context): Answer => ask(input.question, context),
  },
});
