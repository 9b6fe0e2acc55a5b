import type { ClockTime } from '../quantity/dated.ts';
import { hourIn, partHours, type DayPart } from './day-part.ts';

/** What was said of the hour of something past. */
interface SaidHour {
  readonly clock: ClockTime | undefined;
  /** Said with am, pm or noon. */
  readonly isSure: boolean;
  /** "at 8", without am or pm. */
  readonly bare: number | undefined;
  readonly isToday: boolean;
  readonly part: DayPart | undefined;
  /** The words of the part. */
  readonly words: string;
  readonly nowHour: number;
}

export interface HourSaid {
  readonly time: ClockTime | undefined;
  readonly notes: readonly string[];
}

/** The hour by the clock, bare with the part of the day, or the usual one of that part; undefined where none was said. */
export function hourSaid({ clock, isSure, bare, isToday, part, words, nowHour }: SaidHour): HourSaid {
  if (clock !== undefined)
    return { time: { ...clock, hour: isSure ? clock.hour : hourIn(part, clock.hour) }, notes: [] };
  if (bare !== undefined) {
    // "At 1" said at 14:00 is 13:00: the latest that is past.
    const isLater = isToday && part === undefined && bare < 12 && bare + 12 <= nowHour;
    const hour = isLater ? bare + 12 : hourIn(part, bare);
    return { time: { hour, minute: 0 }, notes: [`${bare} read as ${hour}:00`] };
  }
  if (part === undefined) return { time: undefined, notes: [] };
  return { time: { hour: partHours[part], minute: 0 }, notes: [`${words} taken as ${partHours[part]}:00`] };
}
