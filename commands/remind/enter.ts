import { z } from 'zod';
import { MAX_MESSAGE_LENGTH } from '../../core/message-length.ts';
import { Problem } from '../../core/problem.ts';
import { sayInstant } from '../../core/schedule/say.ts';
import { parameter } from '../../core/water/parameter.ts';
import type { Answer } from '../answer.ts';
import { defineCommand, type Context } from '../command.ts';
import type { Keep, Tank } from '../keep.ts';
import { addCommand } from '../log/add.ts';
import { textOption } from '../options.ts';
import type { Reminder } from '../reminder.ts';
import { askedTank, keepOf } from '../tank/asked-tank.ts';
import { ownReminder, reminderOption } from './asked-reminder.ts';
import { done, isDone } from './moves.ts';
import { dueOption, moveTo, nextFacts, doneOccasion } from './occurrence.ts';
import { say } from '../../core/wording/say.ts';

/** A number with a unit at most: a reading of the one thing that is tested. */
const BARE = /^[<~]?\s*\d[\d.,]*\s*(?:[^\d\s/,;][^\d/,;]*)?$/;

export const enterCommand = defineCommand({
  path: ['remind', 'enter'],
  summary: 'Log what you tested for a reminder; counts it as done',
  example: '/remind enter reminder:alkalinity readings:8.1',
  private: true,
  options: z.strictObject({
    reminder: reminderOption(),
    readings: textOption('What you tested, e.g. 8.1, or alk 8.1 ca 420 mg 1350', {
      max: MAX_MESSAGE_LENGTH,
      fields: 'readings',
    }),
    due: dueOption,
  }),
  run: (input, context): Answer => {
    const keep = keepOf(context);
    const { nowMs } = context;
    const reminder = ownReminder(keep, input.reminder);
    const tank = tankFor(keep, reminder);
    const logged = addCommand.run({ readings: named(input.readings, reminder), tank: tank.name }, context);
    return { ...logged, ...settledBy(logged, reminder, input.due, keep, nowMs) };
  },
});

/** Only of the tank it was set for; without one, of the tank in use. */
function tankFor(keep: Keep, { tankId }: Reminder): Tank {
  const tank = keep.tanks().find(({ id }) => id === tankId);
  if (tank !== undefined) return tank;
  if (tankId === undefined) return askedTank(keep);
  throw new Problem(say('remind.tankReminderNoLonger'), {
    field: 'reminder',
    hint: say('remind.logWithLogAdd'),
  });
}

/** For a test of one thing a number is enough. */
function named(readings: string, { parameters }: Reminder): string {
  const [only] = parameters;
  const isBare = only !== undefined && parameters.length === 1 && BARE.test(readings.trim());
  return isBare ? `${parameter(only).label} ${readings.trim()}` : readings;
}

function settledBy(
  logged: Answer,
  reminder: Reminder,
  due: number | undefined,
  keep: Keep,
  nowMs: Context['nowMs'],
): Pick<Answer, 'read' | 'facts' | 'instants'> {
  const occasion = doneOccasion(reminder, due, nowMs);
  if (isDone(reminder, occasion.dueMs)) {
    const read = `reminder ${reminder.id} was done already; it is counted once`;
    return { read: [...logged.read, read], facts: [...logged.facts, ...nextFacts(reminder)] };
  }
  const { anchor, progress } = done(reminder, occasion.early, nowMs, nowMs);
  const after = moveTo(keep, reminder, anchor, progress);
  const read = `reminder ${reminder.id} is done, counted for ${sayInstant(occasion.dueMs, reminder.zone)}`;
  const facts = nextFacts(after).map((fact) => ({ ...fact, label: 'Next test' }));
  const instants = [...(logged.instants ?? []), { atMs: occasion.dueMs, zone: reminder.zone }];
  return { read: [...logged.read, read], facts: [...logged.facts, ...facts], instants };
}
