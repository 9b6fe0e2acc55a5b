/** ISO 8601: 1 is Monday, 7 Sunday. */
export type Weekday = 1 | 2 | 3 | 4 | 5 | 6 | 7;

/** Which weekday of a month; never a fifth, which most months lack. */
export type Nth = 1 | 2 | 3 | 4 | 'last';

/** A day that every month has: 1 to 31, the last day where the month is shorter. */
export type MonthDay = number | 'last' | { readonly nth: Nth; readonly weekday: Weekday };

/**
 * When something repeats, counted from an anchor (a local date and time) in a zone. `count` is a whole number from 1.
 *
 * - `hours`: elapsed time, so the hour on the clock moves when the clocks change. All others keep the clock time.
 * - `weeks`: blocks of seven days from the anchor's date, every `count`-th of them used, on the weekdays `on`.
 * - `months`: 3 is quarterly, 12 yearly; the first is the anchor's month, or the next where its day is already past.
 * - `after`: once at the anchor; the next anchor is set by the day it was done (`anchorAfter`).
 */
export type Rule =
  | { readonly every: 'once' }
  | { readonly every: 'hours'; readonly count: number }
  | { readonly every: 'days'; readonly count: number }
  | { readonly every: 'weeks'; readonly count: number; readonly on: readonly Weekday[] }
  | { readonly every: 'months'; readonly count: number; readonly on: MonthDay }
  | { readonly every: 'after'; readonly days: number };
