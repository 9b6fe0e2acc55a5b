import { suddenUse, type UseChange } from '../../core/trend/change.ts';
import { useBetween, type UseBetween } from '../../core/trend/daily-use.ts';
import { Problem } from '../../core/problem.ts';
import { printed } from '../../core/log/value.ts';
import { significant } from '../../core/quantity/format.ts';
import { parameter, type ParameterId } from '../../core/water/parameter.ts';
import type { OwnContext } from '../command.ts';
import type { Addition, Keep, Reading, Tank } from '../keep.ts';
import { alertFor } from './alerts.ts';
import { inZone } from '../zone.ts';
import { spanWords, timeOf, zoneLine } from './words.ts';

/** How far back the log is read, and the time one estimate spans: common practice, no source. */
const HISTORY_DAYS = 180;
const WINDOW_DAYS = 14;
const DAY_MS = 86_400_000;

/** What the log says of the use of one parameter, in its own unit. */
export interface LoggedUse {
  readonly use: UseBetween;
  readonly before: Reading;
  readonly now: Reading;
  readonly change: UseChange | undefined;
  /** The sentence where the last reading moved faster than is usual. */
  readonly alert: string | undefined;
  readonly read: readonly string[];
}

/**
 * Use from the first to the last reading of the last 14 days, what was added in between added back; where the use has
 * changed suddenly, between the last two alone.
 *
 * @throws Problem where the log has no two readings half a day or more apart.
 */
export function loggedUse(keep: Keep, tank: Tank, id: ParameterId, context: OwnContext): LoggedUse {
  const { kitResolution: resolution, label } = parameter(id);
  const here = inZone(context, tank);
  const range = { fromMs: context.nowMs - HISTORY_DAYS * DAY_MS, toMs: context.nowMs };
  const readings = keep.readings(tank.id, { ...range, parameter: id });
  const additions = keep.additions(tank.id, range).filter((one) => one.parameter === id);
  const uses = useBetween(readings, additions, resolution);
  const last = uses.at(-1);
  if (last === undefined) {
    throw new Problem(`The log of ${tank.name} has no two readings of ${label} half a day or more apart.`, {
      field: 'before',
      hint: 'Log another one (/log add), or type both: before:9.3 now:7.5 over:2 days.',
    });
  }
  const change = suddenUse(uses, resolution);
  const first = uses.find(({ fromMs }) => fromMs >= last.toMs - WINDOW_DAYS * DAY_MS) ?? last;
  const fromMs = (change === undefined ? first : last).fromMs;
  const before = readingAt(readings, fromMs);
  const now = readingAt(readings, last.toMs);
  const [use = last] = useBetween([before, now], additions, resolution);
  const latest = readings.at(-1) ?? now;
  return {
    use,
    before,
    now,
    change,
    alert: alertFor(latest, latest.atMs, readings.slice(0, -1), tank),
    read: [
      `from the log of ${tank.name}: ${label} ${printed(id, before.value, tank.units)} at ${timeOf(before.atMs, here)}, then ${printed(id, now.value, tank.units)} at ${timeOf(now.atMs, here)}, ${spanWords(now.atMs - before.atMs)} apart (${zoneLine(here)})`,
      addedLine(id, additions, use),
      'I only see what is logged: a dose that is not in the log makes the use look smaller',
    ],
  };
}

/** The first one logged of that instant: the one `useBetween` starts from. */
function readingAt(readings: readonly Reading[], atMs: number): Reading {
  const found = readings.find((reading) => reading.atMs === atMs);
  if (found === undefined) throw new Error('a use without its reading');
  return found;
}

function addedLine(id: ParameterId, additions: readonly Addition[], use: UseBetween): string {
  const count = additions.filter(({ atMs }) => atMs >= use.fromMs && atMs < use.toMs).length;
  if (count === 0) return 'nothing logged as added in between';
  return `added in between: ${significant(use.added, 3)} ${parameter(id).unit} in ${count} logged ${count === 1 ? 'dose' : 'doses'}`;
}
