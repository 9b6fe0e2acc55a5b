import type { Temporal } from 'temporal-polyfill';
import { Problem } from '../problem.ts';
import { NUMBER, numberOf } from '../schedule/phrase.ts';
import { WEEKDAY } from '../weekday.ts';
import { instantOf } from '../schedule/zone.ts';
import { say } from '../wording/say.ts';
import { dayNamed, ON_DAY } from './repeat-day.ts';
import { take, unreadable, usual, without, type Scope } from './repeat-said.ts';
import { localTime } from './when.ts';

export const MINUTE_MS = 60_000;
const IN = new RegExp(
  String.raw`\bin (${NUMBER}) (min(?:ute)?s?|hours?|hrs?|h|days?|weeks?|wks?|months?|years?|yrs?)\b`,
  'i',
);
const ON_WEEKDAY = new RegExp(
  String.raw`(?:\b(?:on|this|next|coming) |^)(${WEEKDAY})(?: |$)|\b(${WEEKDAY})$`,
  'i',
);

/**
 * The one local date and time of a reminder that does not repeat: "in 3 days", "tomorrow 7pm", "saturday", "at 9am".
 * `started` is the day after "start", where one was said.
 *
 * @throws Problem where no time is said, or one that is past.
 */
export function once(scope: Scope, started: string | undefined): string {
  const { left, now, time, zone, nowMs, given, field } = scope;
  const soon = take(left, IN);
  if (soon !== undefined) {
    const many = numberOf(soon[1] ?? '');
    const unit = (soon[2] ?? '').toLowerCase();
    if (many < 1 || many > 3660) throw unreadable(field, given);
    if (unit.startsWith('h') || unit.startsWith('mi')) {
      return certain(nowMs + many * (unit.startsWith('h') ? 60 : 1) * MINUTE_MS, zone);
    }
    const key = unit.startsWith('d')
      ? 'days'
      : unit.startsWith('w')
        ? 'weeks'
        : unit.startsWith('y')
          ? 'years'
          : 'months';
    if (key === 'years' && many > 10) throw unreadable(field, given);
    const day = now.toPlainDate().add({ [key]: many });
    return `${day.toString()} ${time ?? minute(now)}`;
  }
  const weekday = started === undefined ? ON_WEEKDAY.exec(left.text) : null;
  const named = started ?? take(left, ON_DAY)?.[1] ?? weekday?.[1] ?? weekday?.[2];
  if (named === undefined && time === undefined) throw unreadable(field, given);
  if (weekday !== null && named === (weekday[1] ?? weekday[2])) left.text = without(left.text, weekday[0]);
  const at = usual(scope);
  const today = now.toPlainDate();
  const day = named === undefined ? today : dayNamed(named, scope, at);
  const waits = named === undefined && instantOf(`${day.toString()} ${at}`, zone) <= nowMs;
  const anchor = `${(waits ? day.add({ days: 1 }) : day).toString()} ${at}`;
  if (instantOf(anchor, zone) > nowMs) return anchor;
  throw new Problem(say('parse.alreadyPast'), {
    field,
    given,
    limit: say('parse.laterThan', { time: localTime(nowMs, zone), zone }),
  });
}

function minute(now: Temporal.PlainDateTime): string {
  return now.toString({ smallestUnit: 'minute' }).slice(11);
}

/** The local minute at or after an instant that names it alone: in a doubled hour the second half has no own name. */
export function certain(atMs: number, zone: string): string {
  for (let ms = Math.ceil(atMs / MINUTE_MS) * MINUTE_MS; ; ms += MINUTE_MS) {
    const local = localTime(ms, zone);
    if (instantOf(local, zone) >= atMs) return local;
  }
}
