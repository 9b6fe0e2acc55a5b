import { z } from 'zod';
import { say } from '../../core/wording/say.ts';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { defineCommand, type OwnContext } from '../command.ts';
import type { Keep } from '../keep.ts';
import type { Reminder } from '../reminder.ts';
import { keepOf } from '../tank/asked-tank.ts';
import { knownZone, onOtherClock, readZone, zoneOption } from '../zone.ts';
import { onClock } from './on-clock.ts';

/** What becomes of reminders when their keeper's clock is another one. */
const MOVES = ['same hour', 'leave'] as const;

export const zoneCommand = defineCommand({
  path: ['zone'],
  summary: 'Your time zone; asks what becomes of the reminders you have',
  example: '/zone zone:Europe/Berlin',
  private: true,
  options: z.strictObject({
    zone: zoneOption(),
    move: z
      .enum(MOVES)
      .describe('What of the reminders set by the old clock: same hour on the new one, or leave them')
      .optional(),
  }),
  run: (input, context): Answer => {
    const keep = keepOf(context);
    if (input.zone === undefined) return shown(context);
    const zone = readZone(input.zone, context);
    keep.setZone(zone);
    const waiting = onOtherClock(keep, zone);
    if (input.move === undefined && waiting.length > 0) return asked(waiting, zone);
    if (input.move !== 'same hour') return done(say('remind.leftAsSet', told(waiting)), zone);
    for (const one of waiting) moveTo(keep, one, zone);
    return done(say('remind.movedHours', { count: waiting.length, zone }), zone);
  },
});

function moveTo(keep: Keep, reminder: Reminder, zone: string): void {
  const { plan, progress } = onClock(reminder, zone);
  keep.changeReminder(reminder.id, plan, progress);
}

function shown(context: OwnContext): Answer {
  const zone = knownZone(context);
  return answer({
    headline: zone === undefined ? say('remind.noZoneYet') : say('remind.yourZone', { zone }),
    next: [
      action(say('remind.otherZone'), 'zone', {}, ['zone']),
      action(say('remind.myReminders'), 'remind list', {}),
    ],
  });
}

function asked(waiting: readonly Reminder[], zone: string): Answer {
  return answer({
    headline: say('remind.askMove', { zone, ...told(waiting) }),
    tone: 'question',
    steps: [say('remind.nothingMovedYet')],
    next: [
      action(say('remind.keepHour'), 'zone', { zone, move: 'same hour' }),
      action(say('remind.keepMoment'), 'zone', { zone, move: 'leave' }),
    ],
  });
}

function told(waiting: readonly Reminder[]): { readonly count: number; readonly before: string } {
  return { count: waiting.length, before: [...new Set(waiting.map((one) => one.zone))].join(', ') };
}

function done(headline: string, zone: string): Answer {
  return answer({
    headline,
    read: [say('remind.zoneIsNow', { zone })],
    next: [action(say('remind.myReminders'), 'remind list', {})],
  });
}
