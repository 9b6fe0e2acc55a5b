import { z } from 'zod';
import { Problem } from '../../core/problem.ts';
import { sayInstant } from '../../core/schedule/say.ts';
import { readMoment } from '../../core/words/moment.ts';
import { localTime } from '../../core/words/when.ts';
import { answer, type Answer } from '../answer.ts';
import { defineCommand } from '../command.ts';
import { textOption } from '../options.ts';
import type { Reminder } from '../reminder.ts';
import { keepOf } from '../tank/asked-tank.ts';
import { askedReminder, reminderOption } from './asked-reminder.ts';
import { later } from './moves.ts';
import { doneBefore, dueOption, moveTo, nextFacts, occasionOf, type Occasion } from './occurrence.ts';
import { following } from './progress.ts';
import { say } from '../../core/wording/say.ts';

/** "This evening", by the clock of the reminder; offered until an hour before. */
const EVENING = '19:00';
const HOUR_MS = 3_600_000;
/** Nothing is put off further: then it wants a new time. */
const MOST_MS = 92 * 24 * HOUR_MS;

export const laterCommand = defineCommand({
  path: ['remind', 'later'],
  summary: 'Remind me once more later: in an hour, this evening, tomorrow',
  example: '/remind later reminder:floss until:in 3 hours',
  private: true,
  options: z.strictObject({
    reminder: reminderOption(),
    until: textOption('When: in 1 hour, this evening, tomorrow 9am').optional(),
    due: dueOption,
  }),
  run: (input, context): Answer => {
    const keep = keepOf(context);
    const { nowMs } = context;
    const { reminder } = askedReminder(keep, input.reminder);
    const occasion = occasionOf(reminder, input.due, nowMs);
    const before = doneBefore(reminder, occasion);
    if (before !== undefined) return before;
    const limitMs = Math.min(
      nowMs + MOST_MS,
      following(reminder, Math.max(nowMs, occasion.early ?? nowMs)) ?? Infinity,
    );
    const untilMs = askedUntil(input.until, reminder, occasion, nowMs, limitMs);
    const after = moveTo(keep, reminder, reminder.anchor, later(reminder, occasion.early, untilMs, nowMs));
    return answer({
      headline: `Later: ${reminder.text}, ${sayInstant(untilMs, reminder.zone)}.`,
      facts: after.againMs === untilMs ? [] : nextFacts(after),
      instants: [{ atMs: untilMs, zone: reminder.zone }],
    });
  },
});

/** @throws Problem with choices where it is not said, and for what is past or not before the next time. */
function askedUntil(
  until: string | undefined,
  reminder: Reminder,
  { dueMs }: Occasion,
  nowMs: number,
  limitMs: number,
): number {
  const { zone, text } = reminder;
  const read = (words: string): number => {
    const said = spelt(words, localTime(dueMs, zone).slice(11));
    return readMoment(said, { field: 'until', nowMs, zone }).atMs;
  };
  const choices = CHOICES.filter((words) => {
    const isEvening = words === 'this evening';
    if (isEvening && localTime(nowMs + HOUR_MS, zone) > `${localTime(nowMs, zone).slice(0, 10)} ${EVENING}`)
      return false;
    const atMs = read(words);
    return atMs > nowMs && atMs < limitMs;
  });
  if (until === undefined) throw new Problem(say('remind.untilWhen', { text }), { field: 'until', choices });
  const atMs = read(until);
  if (atMs > nowMs && atMs < limitMs) return atMs;
  throw new Problem(atMs <= nowMs ? say('remind.notLater') : say('remind.comesByItselfBefore'), {
    field: 'until',
    given: until,
    limit: say('remind.laterThanNowBefore', { sayInstant: sayInstant(limitMs, zone) }),
    choices,
    hint: say('remind.leaveTimeOutRemind'),
  });
}

const CHOICES = ['in 1 hour', 'in 3 hours', 'this evening', 'tomorrow same time'];

function spelt(words: string, sameTime: string): string {
  return words
    .replace(/^(?:this evening|tonight)$/i, `today ${EVENING}`)
    .replace(/^tomorrow(?: at the)? same time$/i, `tomorrow ${sameTime}`)
    .replace(/^tomorrow morning$/i, 'tomorrow 9am');
}
