import { Temporal } from 'temporal-polyfill';

/**
 * Whether reminders can be kept in this zone: an IANA name of the form Area/Place, or UTC, in any case.
 *
 * Names without an area are refused although the database has some: "EST" is New York's winter time all the year
 * round there, which is not what someone in New York means. So are fixed offsets, bare or as
 * "Etc/GMT+5", which know no clock changes.
 */
export function isZone(name: string): boolean {
  if (!/^(?:utc|(?!etc\/)[a-z_]+\/[a-z0-9_+/-]+)$/i.test(name)) return false;
  try {
    return new Intl.DateTimeFormat('en', { timeZone: name }).resolvedOptions().timeZone !== '';
  } catch (error) {
    if (error instanceof RangeError) return false;
    throw error;
  }
}

/** Today's spellings of places the runtime may list by older ones only: IANA time zone database, file backward. */
const RENAMED = [
  'Africa/Asmara',
  'America/Argentina/Buenos_Aires',
  'America/Nuuk',
  'Asia/Ho_Chi_Minh',
  'Asia/Kathmandu',
  'Asia/Kolkata',
  'Asia/Yangon',
  'Atlantic/Faroe',
  'Europe/Kyiv',
];

let names: readonly string[] | undefined;

/** The names to offer, in alphabetical order; a few more (older spellings) pass `isZone` as well. */
export function zoneNames(): readonly string[] {
  names ??= [...new Set(['UTC', ...RENAMED, ...Intl.supportedValuesOf('timeZone')].filter(isZone))].sort();
  return names;
}

/**
 * The instant, in ms since 1970-01-01T00:00Z, of a local date and time ("2026-03-08 02:30") in an IANA zone.
 *
 * RFC 5545 section 3.3.5: a local time that occurs twice is the first; one that is skipped is read with the offset in
 * force before the gap, so it moves forward by the gap. Check: New York, 2007-03-11 02:30 is 07:30Z (shown as 03:30),
 * 2007-11-04 01:30 is 05:30Z. `localTime` in words/when.ts is the way back.
 */
export function instantOf(local: string, zone: string): number {
  return Temporal.PlainDateTime.from(local).toZonedDateTime(zone, { disambiguation: 'compatible' })
    .epochMilliseconds;
}

/** Names of the zones whose clock is so many hours ahead of UTC at an instant. */
export function zonesAtOffset(hours: number, atMs: number): readonly string[] {
  const instant = Temporal.Instant.fromEpochMilliseconds(atMs);
  return zoneNames().filter((name) => instant.toZonedDateTimeISO(name).offsetNanoseconds === hours * 3600e9);
}

/**
 * Names of the zones whose clock shows this time at an instant, the nearest first: to a quarter of an hour, a whole hour to
 * half of one.
 */
export function zonesAtHour(
  { hour, minute }: { readonly hour: number; readonly minute: number },
  atMs: number,
): readonly string[] {
  const instant = Temporal.Instant.fromEpochMilliseconds(atMs);
  const wanted = hour * 60 + minute;
  const apart = (name: string): number => {
    const local = instant.toZonedDateTimeISO(name);
    const minutes = Math.abs(local.hour * 60 + local.minute - wanted);
    return Math.min(minutes, DAY_MINUTES - minutes);
  };
  const most = minute === 0 ? HALF_MINUTES : QUARTER_MINUTES;
  return zoneNames()
    .map((name) => ({ name, away: apart(name) }))
    .filter(({ away }) => away <= most)
    .sort((a, b) => a.away - b.away)
    .map(({ name }) => name);
}

const DAY_MINUTES = 1440;
const QUARTER_MINUTES = 15;
const HALF_MINUTES = 30;

/** A clock change to come: its instant, and by how much the clock goes forward (above 0) or back, minutes. */
export interface ClockChange {
  readonly atMs: number;
  readonly minutes: number;
}

/** The next clock change of a zone, or undefined where none is known. */
export function nextClockChange(zone: string, afterMs: number): ClockChange | undefined {
  const now = Temporal.Instant.fromEpochMilliseconds(afterMs).toZonedDateTimeISO(zone);
  const change = now.getTimeZoneTransition('next');
  if (change === null) return undefined;
  const before = change.subtract({ seconds: 1 });
  const minutes = (change.offsetNanoseconds - before.offsetNanoseconds) / 60e9;
  return { atMs: change.epochMilliseconds, minutes };
}
