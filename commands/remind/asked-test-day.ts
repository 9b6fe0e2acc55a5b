import type { Weekday } from '../../core/schedule/rule.ts';
import { sayInstant } from '../../core/schedule/say.ts';
import { weekdayOf } from '../../core/weekday.ts';
import { readMoment } from '../../core/words/moment.ts';
import { localTime } from '../../core/words/when.ts';

/** The day and hour tests are made. */
export interface TestDay {
  readonly weekday: Weekday;
  /** The next such day, local: "2026-01-10 10:00". */
  readonly firstDay: string;
  /** The next such hour, local, on whatever day. */
  readonly firstHour: string;
  /** "saturday 10:00", to be given again. */
  readonly words: string;
  readonly notes: readonly string[];
}

const USUAL_DAY = 'saturday';
const USUAL_HOUR = '10:00';

/** The option `at`: a weekday, an hour, or both. @throws Problem for anything else. */
export function askedTestDay(given: string | undefined, nowMs: number, zone: string): TestDay {
  const said = (given ?? '').trim();
  const hasDay = /\b(?:mon|tue|wed|thu|fri|sat|sun)/i.test(said);
  const day = hasDay ? said : `${USUAL_DAY} ${said}`.trim();
  const scope = { field: 'at', nowMs, zone, usualTime: USUAL_HOUR };
  const first = readMoment(day, scope);
  const firstDay = localTime(first.atMs, zone);
  const hour = firstDay.slice(11);
  const weekday = weekdayOf(sayInstant(first.atMs, zone));
  const notes =
    given === undefined ? [`test day taken as Saturday at ${USUAL_HOUR}; say another with at`] : [];
  return {
    weekday,
    firstDay,
    firstHour: localTime(readMoment(hour, scope).atMs, zone),
    words: `${sayInstant(first.atMs, zone).split(' ')[0]?.toLowerCase()} ${hour}`,
    notes,
  };
}
