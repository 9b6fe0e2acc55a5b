import { Problem } from '../../core/problem.ts';
import { splitDate } from '../../core/quantity/dated.ts';
import { say } from '../../core/wording/say.ts';

const MS_PER_DAY = 86_400_000;
/** Before this no tank of today was filled. */
const EARLIEST = '1950-01-01';

/**
 * The ISO date of "2025-01-03" or "3 Jan 2025"; without a year the last such day that is past.
 *
 * @throws Problem for another form, a day to come, or one the calendar does not have.
 */
export function askedStarted(text: string, nowMs: number): string {
  const thisYear = new Date(nowMs).getUTCFullYear();
  const tomorrow = nowMs / MS_PER_DAY + 1;
  const read = (year: number): { day: number; assumed: boolean } => {
    const { day, assumedYear } = splitDate(`on ${text}`, 'started', year);
    if (day !== undefined) return { day: Math.floor(day), assumed: assumedYear !== undefined };
    throw new Problem(say('tank.iCouldNotRead2'), {
      field: 'started',
      given: text,
      limit: say('tank.limitStarted'),
    });
  };
  const first = read(thisYear);
  const { day } = first.assumed && first.day > tomorrow ? read(thisYear - 1) : first;
  const iso = new Date(day * MS_PER_DAY).toISOString().slice(0, 10);
  if (day <= tomorrow && iso >= EARLIEST) return iso;
  throw new Problem(day > tomorrow ? say('tank.dayStillCome') : say('tank.tooLongAgoTank'), {
    field: 'started',
    given: text,
    limit: say('tank.limitToToday', { EARLIEST }),
  });
}
