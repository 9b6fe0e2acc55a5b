import { createRequire } from 'node:module';
import { Temporal } from 'temporal-polyfill';

const require = createRequire(import.meta.url);
const known = new Map<string, string | undefined>();
const MONTHS_AHEAD = 25;

/**
 * The VTIMEZONE text of an IANA zone (RFC 5545 section 3.6.5); undefined where the library's one yearly rule is not what
 * this runtime's time zone database says for the next two years (zones whose clock changes follow the moon or a law
 * of this year): then a calendar is to be written in UTC.
 */
export function zoneBlock(zone: string, nowMs: number): string | undefined {
  const key = `${zone} ${new Date(nowMs).toISOString().slice(0, 7)}`;
  if (!known.has(key)) known.set(key, blockOf(zone, nowMs));
  return known.get(key);
}

function blockOf(zone: string, nowMs: number): string | undefined {
  const library = require('timezones-ical-library') as typeof import('timezones-ical-library');
  const [block] = library.tzlib_get_ical_block(zone);
  if (block === undefined || !block.startsWith('BEGIN:VTIMEZONE')) return undefined;
  const agrees = noonsToCompare(zone, nowMs).every(
    (noon) =>
      library.tzlib_get_offset(zone, noon.toPlainDate().toString(), '12:00') === noon.offset.replace(':', ''),
  );
  return agrees ? block.replace(/^TZID:.*$/m, `TZID:${zone}`) : undefined;
}

/** A noon each month, and the noons before and after each clock change. */
function noonsToCompare(zone: string, nowMs: number): readonly Temporal.ZonedDateTime[] {
  const now = Temporal.Instant.fromEpochMilliseconds(nowMs).toZonedDateTimeISO(zone);
  const end = now.add({ months: MONTHS_AHEAD });
  const days = Array.from({ length: MONTHS_AHEAD }, (_, month) => now.add({ months: month }));
  let change = now.getTimeZoneTransition('next');
  while (change !== null && Temporal.ZonedDateTime.compare(change, end) < 0) {
    days.push(change.subtract({ days: 1 }), change.add({ days: 1 }));
    change = change.getTimeZoneTransition('next');
  }
  return days.map((day) => day.withPlainTime('12:00'));
}
