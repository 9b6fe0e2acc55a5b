import { met } from '../../core/language/met.ts';
import { scan, type Scanned } from '../../core/language/tokens.ts';
import { Problem } from '../../core/problem.ts';
import type { Context } from '../command.ts';
import type { Keep } from '../keep.ts';
import type { Reminder } from '../reminder.ts';
import { occurrenceUpTo } from './progress.ts';
import { named } from './times.ts';
import { dueOf } from './wake.ts';
import { say } from '../../core/wording/say.ts';

const DAY_MS = 86_400_000;
/** At most so many are offered as choices. */
const MOST_CHOICES = 8;
/** Shorter words tell nothing apart. */
const LEAST_LETTERS = 3;

/** Those that still come. */
function live(keep: Keep): readonly Reminder[] {
  return keep.reminders().filter((one) => dueOf(one) !== undefined || one.rule.every === 'after');
}

/**
 * The reminder "that" means: the one that was spoken of just before, else the only one that came in the last day, else
 * the only one there is.
 *
 * @throws Problem where there is none, or with those it can be as choices.
 */
export function lastReminder(keep: Keep, { nowMs, talk }: Context): Reminder {
  const all = live(keep);
  const spoken = talk?.before === undefined ? [] : spokenOf(keep, scan(talk.before.last));
  if (spoken.length === 1) return onlyOf(spoken);
  const came = all.filter((one) => (occurrenceUpTo(one, nowMs) ?? -Infinity) > nowMs - DAY_MS);
  return onlyOf(came.length > 0 ? came : all);
}

/** What a message named; one that set a reminder speaks of the newest. */
function spokenOf(keep: Keep, before: Scanned): readonly Reminder[] {
  const found = remindersNamed(keep, before);
  if (found.length > 0 || !met(before, 'deeds.reminds')) return found;
  return [...live(keep)].sort((a, b) => b.id - a.id).slice(0, 1);
}

/** @throws Problem where there is none, or several: which of them? */
export function onlyOf(all: readonly Reminder[]): Reminder {
  const [only, other] = all;
  if (only !== undefined && other === undefined) return only;
  throw new Problem(only === undefined ? say('remind.youHaveNoReminder') : say('coral.whichOfThem'), {
    field: 'reminder',
    hint: say('remind.seeThemAllWith'),
    choices: all.slice(0, MOST_CHOICES).map(named),
  });
}

/** The reminders a message names by words of their text, those with the most words in common. */
export function remindersNamed(keep: Keep, { tokens, names }: Scanned): readonly Reminder[] {
  const said = new Set(tokens.map(({ word }) => word));
  const parameters = new Set(names.map(({ id }) => id));
  const scored = live(keep).map((one) => ({
    one,
    score:
      one.parameters.filter((id) => parameters.has(id)).length +
      wordsOf(one.text).filter((word) => said.has(word)).length,
  }));
  const most = Math.max(0, ...scored.map(({ score }) => score));
  return most === 0 ? [] : scored.filter(({ score }) => score === most).map(({ one }) => one);
}

/** Words that many reminders have. */
const COMMON: ReadonlySet<string> = new Set(['test', 'change', 'check', 'clean', 'the', 'and', 'for', 'all']);

function wordsOf(text: string): readonly string[] {
  return scan(text)
    .tokens.map(({ word }) => word)
    .filter((word) => word.length >= LEAST_LETTERS && !COMMON.has(word));
}
