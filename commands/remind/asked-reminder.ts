import { Problem } from '../../core/problem.ts';
import { clean } from '../../core/quantity/clean.ts';
import type { Keep } from '../keep.ts';
import { textOption } from '../options.ts';
import type { Reminder } from '../reminder.ts';
import { named } from './times.ts';
import { say } from '../../core/wording/say.ts';

/** A reminder and whether it is the asker's own; else it is handed over to them. */
export interface FoundReminder {
  readonly reminder: Reminder;
  readonly mine: boolean;
}

/** At most so many are offered as choices. */
const MOST_CHOICES = 8;

export function reminderOption() {
  return textOption('Which reminder: its number, or part of its text', { suggest: 'reminder' });
}

/**
 * The reminder of a number ("12", "12: change filter floss"), or the one whose text holds the words. Of others only
 * those handed over to the asker are found, and by their number alone.
 *
 * @throws Problem where there is none or more than one; the same for what is not theirs as for what does not exist.
 */
export function askedReminder(keep: Keep, given: string): FoundReminder {
  const id = /^#?(\d{1,15})(?::.*)?$/s.exec(given.trim())?.[1];
  if (id !== undefined) {
    const found = keep.reminder(Number(id));
    if (found !== undefined) return found;
    throw notYours(keep, given);
  }
  const wanted = clean(given);
  const all = keep.reminders();
  const exact = all.filter(({ text }) => clean(text) === wanted);
  const fitting = exact.length > 0 ? exact : all.filter(({ text }) => clean(text).includes(wanted));
  const [only] = fitting;
  if (only === undefined || wanted === '') throw notYours(keep, given);
  if (fitting.length === 1) return { reminder: only, mine: true };
  throw new Problem(say('coral.whichOfThem'), {
    field: 'reminder',
    given,
    choices: fitting.slice(0, MOST_CHOICES).map(named),
  });
}

/** As `askedReminder`, for what only the owner may do. */
export function ownReminder(keep: Keep, given: string): Reminder {
  const { reminder, mine } = askedReminder(keep, given);
  if (mine) return reminder;
  throw new Problem(say('remind.onlyItsOwnerCan'), {
    field: 'reminder',
    given,
    hint: say('remind.youCanSayDone'),
  });
}

function notYours(keep: Keep, given: string): Problem {
  return new Problem(say('remind.notOneYourReminders'), {
    field: 'reminder',
    given,
    hint: say('remind.seeThemAllWith'),
    choices: keep.reminders().slice(0, MOST_CHOICES).map(named),
  });
}
