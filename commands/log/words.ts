import { counted, fixed } from '../../core/quantity/format.ts';
import { localTime } from '../../core/words/when.ts';
import type { Instant } from '../instants.ts';
import type { Context } from '../command.ts';

const MINUTE_MS = 60_000;

/** "2 days", "5 hours", "20 minutes", "under a minute": a span of time as people say it. */
export function spanWords(ms: number): string {
  const minutes = Math.round(ms / MINUTE_MS);
  if (minutes === 0) return 'under a minute';
  if (minutes < 90) return counted(minutes, 'minute');
  const hours = minutes / 60;
  if (hours < 36) return counted(Math.round(hours), 'hour');
  const days = hours / 24;
  return days < 10 ? counted(Number(fixed(days, 1)), 'day') : counted(Math.round(days), 'day');
}

/** "2026-01-03 18:00", by the asker's clock. */
export function timeOf(atMs: number, { zone }: Context): string {
  return localTime(atMs, zone);
}

/** The moments that an answer tells in the words of `timeOf`. */
export function momentsOf(moments: readonly number[], { zone = 'UTC' }: Context): readonly Instant[] {
  return moments.map((atMs) => ({ atMs, zone }));
}

/** "times are those of UTC": which clock the times of an answer are by. */
export function zoneLine({ zone = 'UTC' }: Context): string {
  return `times by the clock of ${zone}`;
}

/** What of a line was left aside, each part in quotes. */
export function unreadParts(unread: readonly string[]): readonly string[] {
  return unread.map((part) => `"${part}"`);
}

/** Those of the parts left aside that hold a number, in quotes. */
export function unreadNumbers(unread: readonly string[]): readonly string[] {
  return unreadParts(unread.filter((part) => /\d/.test(part)));
}
