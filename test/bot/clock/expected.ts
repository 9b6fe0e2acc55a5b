/** Expectations from the calendar and zone data of the language (Intl), which the bot's own schedule does not use. */
const dayMs = 86_400_000;

/** "2026-01-31" and so on, every day of a year. */
export function daysOf(year: number): readonly string[] {
  const days: string[] = [];
  for (let atMs = Date.UTC(year, 0, 1); atMs < Date.UTC(year + 1, 0, 1); atMs += dayMs)
    days.push(isoDay(atMs));
  return days;
}

export function isoDay(atMs: number): string {
  return new Date(atMs).toISOString().slice(0, 10);
}

/**
 * The instant of a local time: the first where the clock shows it twice; where it is skipped, read with the offset
 * before the gap (RFC 5545 section 3.3.5).
 */
export function instantByIntl(day: string, time: string, zone: string): number {
  const asUtc = Date.parse(`${day}T${time}Z`);
  const before = offsetMs(asUtc - dayMs, zone);
  const offsets = [before, offsetMs(asUtc + dayMs, zone)];
  const shown = offsets
    .map((offset) => asUtc - offset)
    .filter((atMs) => atMs + offsetMs(atMs, zone) === asUtc);
  return shown.length === 0 ? asUtc - before : Math.min(...shown);
}

const formats = new Map<string, Intl.DateTimeFormat>();

function offsetMs(atMs: number, zone: string): number {
  const style = { timeZone: zone, dateStyle: 'short', timeStyle: 'medium' } as const;
  const format = formats.get(zone) ?? new Intl.DateTimeFormat('sv-SE', style);
  formats.set(zone, format);
  return Date.parse(`${format.format(atMs).replace(' ', 'T')}Z`) - atMs;
}
