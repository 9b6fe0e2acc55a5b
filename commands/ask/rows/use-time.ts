import { isMoreThanUsual } from '../../../core/dosing/usual-use.ts';
import type { Frame } from '../../../core/language/frame.ts';
import { say } from '../../../core/wording/say.ts';
import { action } from '../../calls.ts';
import { inOwnUnit } from '../../dose/asked.ts';
import { readPerDay } from '../../waterchange/rate.ts';
import type { Need } from '../row.ts';
import { attempt } from './attempt.ts';
import { perDays } from './span-said.ts';
import { saltFor } from './wanted.ts';

/** A use without its time that no tank has in a day: it is asked, and not taken for one of a day. */
export const timeOfUse: Need = {
  oneOf: ['rate', 'span', 'moments'],
  ask: 'ask.fallInADayOrWeek',
  when: isTimeless,
  next: ({ slots }) => {
    const { of, change, volume } = slots;
    if (of === undefined || change === undefined) return [];
    const given = { of, with: saltFor(slots, of), volume };
    return [
      action(say('ask.inADay'), 'dose daily', { ...given, use: perDays(change, 1) }),
      action(say('ask.inAWeek'), 'dose daily', { ...given, use: perDays(change, 7) }),
    ];
  },
};

function isTimeless({ slots: { of, change, levels = [] } }: Frame): boolean {
  if (of === undefined || change === undefined) return false;
  if (levels.some((level) => level.of === of && level.everyDays !== undefined)) return false;
  const used = attempt(() => inOwnUnit(of, readPerDay(of, change, 'use').perDay));
  return used !== undefined && isMoreThanUsual(of, used);
}
