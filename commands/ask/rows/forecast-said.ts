import { daysUntilDay, type Today } from '../../../core/language/days-until.ts';
import type { Frame } from '../../../core/language/frame.ts';
import { met } from '../../../core/language/met.ts';
import type { Said } from '../../../core/language/said.ts';
import type { Scanned } from '../../../core/language/tokens.ts';
import { withUnit } from '../../../core/language/system-volume.ts';
import { readQuantity } from '../../../core/quantity/read.ts';
import { localTime } from '../../../core/words/when.ts';
import type { OwnContext } from '../../command.ts';
import { knownZone } from '../../zone.ts';
import { spanSaid } from './span-said.ts';
import { tokensWithin, wordsBefore } from './words-beside.ts';

/** How long, and what it was counted from where it was not said as a time. */
export interface DaysSaid {
  readonly days: string | undefined;
  readonly read: readonly string[];
}

/**
 * How long the water goes: as it was said, up to the day that is named for it ("by the 14th", "since monday, till sunday"),
 * else between two days.
 */
export function daysSaid({ slots, reading: { scanned, said } }: Frame, context: OwnContext): DaysSaid {
  const ahead = said.filter(({ part, number }) => part === 'moment' && !isSince(scanned, number.start));
  const [first, last] = [ahead[0], ahead.at(-1)];
  const days =
    slots.span !== undefined || last === undefined
      ? undefined
      : daysBetween(first === last ? undefined : first?.text, last.text, todayOf(context));
  if (days === undefined || last === undefined) return { days: spanSaid(slots, context), read: [] };
  return { days: `${days} days`, read: [`up to ${last.text}, counted from today: ${days} days`] };
}

/** "since monday", "since last monday". */
function isSince(scanned: Scanned, start: number): boolean {
  const [last, other] = wordsBefore(scanned, start);
  return last === 'since' || (last === 'last' && other === 'since');
}

/** Days from one day to come, or from today, to a later one. */
function daysBetween(first: string | undefined, last: string, today: Today): number | undefined {
  const [from, to] = [first === undefined ? 0 : daysUntilDay(first, today), daysUntilDay(last, today)];
  return from === undefined || to === undefined || to <= from ? undefined : to - from;
}

function todayOf(context: OwnContext): Today {
  const [date = ''] = localTime(context.nowMs, knownZone(context)).split(' ');
  const [year = 1970, month = 1, dayOfMonth = 1] = date.split('-').map(Number);
  return { year, month, dayOfMonth };
}

/** Water that is gone between two volumes of one system. */
export interface Sunk {
  readonly from: string;
  readonly gone: string;
}

/** "it evaporates from 150 to 140 l": the system before, and what went; undefined where it is not told so. */
export function sunk({ reading: { scanned, said } }: Frame): Sunk | undefined {
  if (!met(scanned, 'deeds.evaporates')) return undefined;
  const at = said.findIndex((one, index) => isPair(scanned, one, said[index + 1]));
  const [high, low] = [said[at], said[at + 1]];
  if (high === undefined || low === undefined) return undefined;
  const [before, after] = [high, low].map((one) => withUnit(scanned, said, one));
  const [full = 0, left = 0] = [before, after].map(
    (text = '') => readQuantity('volume', text, { field: 'volume', fallback: 'l' }).value,
  );
  const whole = said.find((one) => one !== high && one !== low && isSystem(one))?.text;
  return left < full
    ? { from: whole ?? before ?? '', gone: `${Number((full - left).toFixed(3))} l` }
    : undefined;
}

const DOWN_TO: ReadonlySet<string> = new Set(['to', 'till', 'until']);
/** Words between the two volumes at most. Own choice. */
const MOST_BETWEEN = 3;

/** Two volumes with "to" between them, the unit said at one of them or at both. */
function isPair(scanned: Scanned, high: Said, low: Said | undefined): boolean {
  if (low === undefined || !isVolume(high) || !isVolume(low)) return false;
  const isSaid = [high, low].some(({ number }) => number.kinds.includes('volume'));
  const between = tokensWithin(scanned, high.number.end, low.number.start);
  return isSaid && between.length <= MOST_BETWEEN && DOWN_TO.has(between.at(-1)?.word ?? '');
}

function isVolume({ number: { kinds } }: Said): boolean {
  return kinds.length === 0 || kinds.includes('volume');
}

function isSystem({ part, number }: Said): boolean {
  return part === 'system' && number.kinds.includes('volume');
}
