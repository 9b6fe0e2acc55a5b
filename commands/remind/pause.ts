import { z } from 'zod';
import { Problem } from '../../core/problem.ts';
import { readMoment } from '../../core/words/moment.ts';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { defineCommand, type Context } from '../command.ts';
import { textOption } from '../options.ts';
import type { Pause, Reminder } from '../reminder.ts';
import { keepOf } from '../tank/asked-tank.ts';
import { knownZone } from '../zone.ts';
import { ownReminder, reminderOption } from './asked-reminder.ts';
import { paused } from './moves.ts';
import { named, timeFact } from './times.ts';
import { dueOf, wakeOf } from './wake.ts';
import { say } from '../../core/wording/say.ts';

export const pauseCommand = defineCommand({
  path: ['remind', 'pause'],
  summary: 'Send nothing for a time: one reminder, or all of them while you are away',
  example: '/remind pause from:10 jan until:20 jan',
  private: true,
  options: z.strictObject({
    reminder: reminderOption().optional(),
    from: textOption('From when, if not now: 10 jan, friday 18:00, in 2 days').optional(),
    until: textOption('Until when: 20 jan, sunday 9am, 2 weeks; until you resume it if left out').optional(),
  }),
  run: (input, context): Answer => {
    const keep = keepOf(context);
    const { nowMs } = context;
    const which = input.reminder === undefined ? keep.reminders() : [ownReminder(keep, input.reminder)];
    const live = which.filter((one) => dueOf(one) !== undefined || one.rule.every === 'after');
    if (live.length === 0) throw nothingToPause(input.reminder);
    const zone = live[0]?.zone ?? knownZone(context) ?? 'UTC';
    const { pause, read } = askedSpan(input, zone, context);
    const after = live.map((one) => {
      const { id, anchor } = one;
      return keep.moveReminder(id, anchor, paused(one, pause)) ?? one;
    });
    return answer({
      headline: headline(after, pause),
      read,
      facts: [
        timeFact('Quiet from', pause.fromMs, zone),
        ...(pause.untilMs === undefined ? [] : [timeFact('Quiet until', pause.untilMs, zone)]),
        ...firstAfter(after, pause, nowMs),
      ],
      steps: [
        'To start again before that, or at any time: /remind resume.',
        'To let someone else have them meanwhile: /remind hand-over.',
      ],
      next: [
        action(say('remind.resumeNow'), 'remind resume', {
          reminder: input.reminder === undefined ? undefined : String(after[0]?.id ?? ''),
        }),
      ],
    });
  },
});

/** A day without an hour is its first minute: what is due on the day of return comes. */
export const DAY_BEGINS = '00:00';

interface Span {
  readonly from?: string | undefined;
  readonly until?: string | undefined;
}

/** @throws Problem for a span that ends before it begins. */
function askedSpan({ from, until }: Span, zone: string, { nowMs }: Context) {
  const scope = { nowMs, zone, usualTime: DAY_BEGINS };
  const start = from === undefined ? undefined : readMoment(from, { ...scope, field: 'from' });
  const end = until === undefined ? undefined : readMoment(until, { ...scope, field: 'until' });
  const fromMs = start?.atMs ?? nowMs;
  if (end !== undefined && end.atMs <= fromMs) {
    throw new Problem(say('remind.mustEndAfterBegins2'), { field: 'until', given: until });
  }
  const pause: Pause = { fromMs, untilMs: end?.atMs };
  return { pause, read: [...new Set([...(start?.notes ?? []), ...(end?.notes ?? [])])] };
}

function headline(after: readonly Reminder[], { untilMs }: Pause): string {
  const [first] = after;
  const what =
    after.length === 1 && first !== undefined ? `Reminder ${named(first)}` : `All ${after.length} reminders`;
  const are = after.length === 1 ? 'is' : 'are';
  return `${what} ${are} paused${untilMs === undefined ? ' until you resume' : ''}.`;
}

function firstAfter(after: readonly Reminder[], pause: Pause, nowMs: number) {
  const coming = after.flatMap((one) => {
    const wakeMs = wakeOf(one);
    return wakeMs === undefined || wakeMs < (pause.untilMs ?? Infinity) ? [] : [{ one, wakeMs }];
  });
  const [first] = coming.sort((a, b) => a.wakeMs - b.wakeMs);
  const before = after.filter(
    (one) => (dueOf(one) ?? Infinity) < pause.fromMs && pause.fromMs > nowMs,
  ).length;
  return [
    ...(before === 0 ? [] : [{ label: 'Before that', value: `${before} still come as usual` }]),
    ...(first === undefined
      ? []
      : [timeFact(`First after it: ${first.one.text}`, first.wakeMs, first.one.zone)]),
  ];
}

function nothingToPause(given: string | undefined): Problem {
  return given === undefined
    ? new Problem(say('remind.youHaveNoReminder2'), {
        field: 'reminder',
        hint: say('remind.seeThemWithRemind'),
      })
    : new Problem(say('remind.oneOverThereNothing'), { field: 'reminder', given });
}
