import { z } from 'zod';
import { Problem } from '../../core/problem.ts';
import { nextAfter } from '../../core/schedule/repeat.ts';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { defineCommand } from '../command.ts';
import { textOption } from '../options.ts';
import { MOST_REMINDER_LETTERS, type Plan, type Reminder } from '../reminder.ts';
import { keepOf } from '../tank/asked-tank.ts';
import { askedPlace, placeOptions } from './asked-place.ts';
import { askedText, askedWhen } from './asked-plan.ts';
import { ownReminder, reminderOption } from './asked-reminder.ts';
import { firstTimes } from './first-times.ts';
import { changed } from './moves.ts';
import { nextFacts } from './occurrence.ts';
import { placeCautions, placeFact, startedOr } from './set.ts';
import { whenOption } from './task.ts';
import { ruleWords } from './times.ts';
import { say } from '../../core/wording/say.ts';

export const changeCommand = defineCommand({
  path: ['remind', 'change'],
  summary: 'Change when a reminder comes, what it says or where',
  example: '/remind change reminder:floss when:every sunday 10am',
  private: true,
  options: z.strictObject({
    reminder: reminderOption(),
    when: whenOption.optional(),
    text: textOption('What it shall say', { max: MOST_REMINDER_LETTERS }).optional(),
    ...placeOptions,
  }),
  run: (input, context): Answer => {
    const keep = keepOf(context);
    const { nowMs } = context;
    const reminder = ownReminder(keep, input.reminder);
    const place = askedPlace(input, context);
    if (input.when === undefined && input.text === undefined && place === undefined) {
      throw new Problem(say('remind.whatShallIChange'), {
        field: 'when',
        limit: say('remind.whenTextChannelWhere'),
      });
    }
    const repeat =
      input.when === undefined ? undefined : askedWhen(input.when, { nowMs, zone: reminder.zone });
    const plan: Plan = {
      ...planPart(reminder),
      ...(repeat === undefined
        ? {}
        : { ...repeatPart(repeat), times: timesLeft(reminder, repeat.rule, nowMs) }),
      ...(input.text === undefined ? {} : { text: askedText(input.text, 'text') }),
      ...(place === undefined ? {} : { place }),
    };
    if (repeat !== undefined) startedOr(plan, nowMs);
    const after = keep.changeReminder(reminder.id, plan, changed(reminder, plan, nowMs));
    if (after === undefined) throw new Problem(say('remind.reminderGone'), { field: 'reminder' });
    return answer({
      headline: `Changed reminder ${after.id}: ${after.text}, ${ruleWords(after)}.`,
      read: repeat?.notes ?? [],
      facts: [
        ...(repeat === undefined || after.pause !== undefined ? nextFacts(after) : firstTimes(after, nowMs)),
        placeFact(after.place),
      ],
      cautions: placeCautions(after.place),
      next: [action(say('remind.myReminders'), 'remind list', {})],
    });
  },
});

function planPart({ text, parameters, tankId, anchor, zone, rule, times, place }: Reminder): Plan {
  return { text, parameters, tankId, anchor, zone, rule, times, place };
}

function repeatPart({ anchor, rule }: Pick<Plan, 'anchor' | 'rule'>): Pick<Plan, 'anchor' | 'rule'> {
  return { anchor, rule };
}

/** Of a reminder that ends, the times that are left go on in the new rhythm. */
function timesLeft(reminder: Reminder, rule: Plan['rule'], nowMs: number): number | undefined {
  const { times, anchor, zone } = reminder;
  if (times === undefined || rule.every === 'once' || rule.every === 'after') return undefined;
  const next = nextAfter(anchor, zone, reminder.rule, nowMs);
  return Math.max(1, times - (next?.index ?? times));
}
