import { z } from 'zod';
import { MAX_MESSAGE_LENGTH } from '../../core/message-length.ts';
import { ruleText } from '../../core/schedule/say.ts';
import { readRepeats } from '../../core/words/repeats.ts';
import { answer, type Answer, type Fact, type NextAction } from '../answer.ts';
import { action } from '../calls.ts';
import { defineCommand, type OwnContext } from '../command.ts';
import { textOption } from '../options.ts';
import type { Plan } from '../reminder.ts';
import { zoneOption } from '../zone.ts';
import { addAll } from './add-all.ts';
import { firstTimes } from './first-times.ts';
import { inSaidZone } from './said-zone.ts';
import { planOf, startedOr, tankLines, tankOf } from './set.ts';
import { tankOption } from './task.ts';
import { ruleWords } from './times.ts';
import { readWishText } from './wish-text.ts';
import { say } from '../../core/wording/say.ts';

export const severalCommand = defineCommand({
  path: ['remind', 'several'],
  summary: 'Several reminders in one text; shows them first',
  example: '/remind several text:change floss every sat, water change every other sat, start 3 jan 2026',
  private: true,
  options: z.strictObject({
    text: textOption('Each with its time, between commas: change floss every sat, test alk mondays', {
      max: MAX_MESSAGE_LENGTH,
    }),
    tank: tankOption,
    zone: zoneOption(),
    sure: z.enum(['yes']).describe('yes sets them').optional(),
  }),
  run: (input, context): Answer => severalAnswer(input, context),
});

export interface SeveralInput {
  readonly text: string;
  readonly tank?: string | undefined;
  readonly zone?: string | undefined;
  readonly sure?: 'yes' | undefined;
}

/** Each part read back; set after a yes. */
export function severalAnswer(input: SeveralInput, context: OwnContext): Answer {
  const { nowMs } = context;
  const tank = tankOf(context, input.tank);
  const { text, zone, read } = inSaidZone(input.text, input.zone, context, tank);
  const repeats = readRepeats(text, { field: 'text', nowMs, zone });
  const plans = repeats.map((repeat) => planOf({ ...readWishText(repeat.rest, 'text'), tank, zone, repeat }));
  const notes = new Set(repeats.flatMap((repeat) => repeat.notes));
  const lines = [...tankLines(tank), ...read, ...notes];
  if (input.sure === 'yes') return addAll(plans, context, lines);
  for (const plan of plans) startedOr(plan, nowMs);
  const given = { text: input.text, ...(input.tank === undefined ? {} : { tank: input.tank }) };
  const all = action(say('remind.yesSetAll', { length: plans.length }), 'remind several', {
    ...given,
    sure: 'yes',
  });
  return answer({
    headline: `I read ${plans.length === 1 ? 'one reminder' : `${plans.length} reminders`} in that. Nothing is set yet.`,
    read: lines,
    isList: true,
    facts: plans.map((plan) => readBack(plan, nowMs)),
    steps: ['Look at each line: is it what you mean? If not, say it again in other words.'],
    next: [all, ...(plans.length > 1 ? plans.map((plan) => oneOf(plan, input.tank)) : [])],
  });
}

/** A plan in words, with the first days it comes. */
export function readBack(plan: Plan, nowMs: number): Fact {
  const days = firstTimes(plan, nowMs).map(({ value }) => value.replace(/ \d\d:\d\d$/, ''));
  return { label: plan.text, value: `${ruleWords(plan)}: ${days.join(', ')}, ...` };
}

/** One of them alone, for where the whole text is too long for a button. */
function oneOf({ text, anchor, rule, parameters }: Plan, tank: string | undefined): NextAction {
  const when = ruleText(rule, anchor);
  const named = tank === undefined ? {} : { tank };
  return parameters.length > 0
    ? action(say('remind.only', { text }), 'remind test', { of: parameters.join(', '), when, ...named })
    : action(say('remind.only', { text }), 'remind task', { text, when, ...named });
}
