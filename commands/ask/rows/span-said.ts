import { daysAmong } from '../../../core/language/days-between.ts';
import type { Slots } from '../../../core/language/slots.ts';
import { significant } from '../../../core/quantity/format.ts';
import { readQuantity } from '../../../core/quantity/read.ts';
import { weekdayOf } from '../../../core/weekday.ts';
import type { OwnContext } from '../../command.ts';
import { knownZone } from '../../zone.ts';

/**
 * The time between the first and the last reading of what a message is about: said as such, or by their days. Where there
 * are days to count, one day is what the use is asked for ("per 24 h").
 */
export function spanSaid(slots: Slots, context: OwnContext): string | undefined {
  const { of, levels = [], span, moments = [] } = slots;
  const mine = levels.filter((level) => level.of === of && (level.part === 'was' || level.part === 'now'));
  const beside = mine.flatMap(({ moment }) => (moment === undefined ? [] : [moment]));
  const days = daysAmong(beside, today(context)) ?? daysAmong(moments, today(context));
  const isOneDay =
    span !== undefined && readQuantity('days', span, { field: 'over', fallback: 'days' }).value === 1;
  if (span !== undefined && !(isOneDay && days !== undefined && days > 1)) return span;
  return days === undefined ? span : `${days} days`;
}

/** A use or a fall in a time that was said, "1.2 dkh per 1 days"; undefined where either is missing. */
export function fallRate(slots: Slots, context: OwnContext): string | undefined {
  const { of, levels = [], rate, rateDays, change } = slots;
  if (rate !== undefined && rateDays !== undefined) return perDays(rate, rateDays);
  const timed = levels.find((level) => level.of === of && level.part === 'change');
  if (timed?.everyDays !== undefined) return perDays(timed.text, timed.everyDays);
  const span = spanSaid(slots, context);
  if (change === undefined || span === undefined) return undefined;
  return perDays(change, readQuantity('days', span, { field: 'over', fallback: 'days' }).value);
}

export function perDays(amount: string, days: number): string {
  return `${amount} per ${significant(days, 4)} days`;
}

/** The weekday where the asker is, 1 for Monday. */
function today(context: OwnContext): number {
  const timeZone = knownZone(context) ?? 'UTC';
  return weekdayOf(new Date(context.nowMs).toLocaleDateString('en-GB', { weekday: 'long', timeZone }));
}
