import { z } from 'zod';
import { calendarText, type CalendarEntry } from '../../core/schedule/ical.ts';
import { nextAfter } from '../../core/schedule/repeat.ts';
import { localTime } from '../../core/words/when.ts';
import { Problem } from '../../core/problem.ts';
import { answer, type Answer } from '../answer.ts';
import { defineCommand } from '../command.ts';
import type { Keep } from '../keep.ts';
import type { Reminder } from '../reminder.ts';
import { keepOf } from '../tank/asked-tank.ts';
import { wakeOf } from './wake.ts';
import { say } from '../../core/wording/say.ts';

const NAME = 'Tank reminders';

export const calendarCommand = defineCommand({
  path: ['remind', 'calendar'],
  summary: 'Your reminders as a calendar file (iCalendar) for any calendar that takes one',
  example: '/remind calendar',
  private: true,
  options: z.strictObject({}),
  run: (_, context): Answer => {
    const keep = keepOf(context);
    const { nowMs } = context;
    const all = keep.reminders();
    const coming = all.filter((one) => wakeOf(one) !== undefined);
    if (coming.length === 0) {
      throw new Problem(say('remind.noneYourRemindersHas'), {
        field: 'reminder',
        hint: say('remind.setOneWithRemind'),
      });
    }
    const left = all.length - coming.length;
    const onlyNext = coming.some(({ rule }) => rule.every === 'after');
    return answer({
      headline: `A calendar file with ${coming.length === 1 ? 'one reminder' : `${coming.length} reminders`}.`,
      read: [
        ...(left === 0 ? [] : [`${left} left out: over, stopped, or waiting to be done or resumed`]),
        ...(onlyNext ? ['of those counted from when you last did it only the next time is in it'] : []),
      ],
      steps: [
        'Open it with your calendar, or import it there.',
        'It does not change by itself: after you change a reminder, take a new file.',
      ],
      file: {
        name: 'reminders.ics',
        text: calendarText(
          NAME,
          coming.flatMap((one) => entriesOf(one, keep)),
          nowMs,
        ),
      },
    });
  },
});

function entriesOf(reminder: Reminder, keep: Keep): readonly CalendarEntry[] {
  const { id, text, anchor, zone, rule, nextMs, againMs, pause } = reminder;
  const tank = keep.tanks().find((each) => each.id === reminder.tankId);
  const summary = tank === undefined ? text : `${tank.name}: ${text}`;
  const uid = `reminder-${id}@sumpside.invalid`;
  const out = pause?.untilMs === undefined ? undefined : { fromMs: pause.fromMs, untilMs: pause.untilMs };
  const next =
    nextMs === undefined
      ? []
      : [{ uid, summary, anchor, zone, rule, times: timesBefore(reminder), fromMs: nextMs, pause: out }];
  const again =
    againMs === undefined
      ? []
      : [
          {
            uid: `again-${uid}`,
            summary,
            anchor: localTime(againMs, zone),
            zone,
            rule: ONCE,
            fromMs: againMs - MINUTE_MS,
          },
        ];
  return [...next, ...again];
}

/** A pause without an end ends the calendar. */
function timesBefore({ anchor, zone, rule, times, pause }: Reminder): number | undefined {
  if (pause === undefined || pause.untilMs !== undefined) return times;
  const first = nextAfter(anchor, zone, rule, pause.fromMs - 1);
  return first === undefined ? times : Math.min(times ?? Infinity, first.index);
}

const ONCE = { every: 'once' } as const;
/** An anchor has whole minutes. */
const MINUTE_MS = 60_000;
