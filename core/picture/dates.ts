import { Temporal } from 'temporal-polyfill';

const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'] as const;

/** What a clock on the wall in an IANA zone shows at an instant, as if that were UTC: milliseconds since 1970. */
export function wallMs(atMs: number, zone: string): number {
  if (zone === 'UTC') return atMs;
  const { offsetNanoseconds } = Temporal.Instant.fromEpochMilliseconds(Math.round(atMs)).toZonedDateTimeISO(
    zone,
  );
  return atMs + offsetNanoseconds / 1e6;
}

/** `wallMs` of a zone that works each instant out once: a picture asks for the same ones again and again. */
export function wallClock(zone: string): (atMs: number) => number {
  const known = new Map<number, number>();
  return (atMs) => {
    const wall = known.get(atMs) ?? wallMs(atMs, zone);
    known.set(atMs, wall);
    return wall;
  };
}

/** "3 Mar" of a wall time; with `year`, "3 Mar 2026". */
export function dayText(wall: number, year = false): string {
  const date = new Date(wall);
  const day = `${date.getUTCDate()} ${MONTHS[date.getUTCMonth()]}`;
  return year ? `${day} ${date.getUTCFullYear()}` : day;
}

/** "3 Mar 2026 to 9 Mar 2026", the first year only where it differs. */
export function rangeText(fromWall: number, toWall: number): string {
  const [from, to] = [new Date(fromWall), new Date(toWall)];
  const last = dayText(toWall, true);
  const first = dayText(fromWall, from.getUTCFullYear() !== to.getUTCFullYear());
  return first === last || dayText(fromWall, true) === last ? last : `${first} to ${last}`;
}

/** Label of a tick, as fine as the step between ticks needs: "14:00", "3 Mar", "Mar 2026", "2026". */
export function tickText(wall: number, stepDays: number): string {
  const date = new Date(wall);
  const month = MONTHS[date.getUTCMonth()];
  if (stepDays > 360) return String(date.getUTCFullYear());
  if (stepDays > 27) return `${month} ${date.getUTCFullYear()}`;
  if (stepDays >= 1 || date.getUTCHours() + date.getUTCMinutes() === 0) return dayText(wall);
  return `${String(date.getUTCHours()).padStart(2, '0')}:${String(date.getUTCMinutes()).padStart(2, '0')}`;
}
