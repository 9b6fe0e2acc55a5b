import type { Temporal } from 'temporal-polyfill';
import { Problem } from '../problem.ts';
import { CLOCK, noSuchDate, readClock } from '../quantity/dated.ts';
import { say } from '../wording/say.ts';

/** Where and when it was said. */
export interface RepeatContext {
  readonly field: string;
  readonly nowMs: number;
  /** IANA name. */
  readonly zone: string;
  /** The hour where none is said, "09:00" where left out. */
  readonly usualTime?: string | undefined;
}

/** A sentence while it is read: every part that is understood is taken out of `text`. */
export interface Left {
  text: string;
  readonly notes: string[];
}

/** All that is known while a sentence is read; `time` is the hour said, "09:00". */
export interface Scope extends RepeatContext {
  readonly given: string;
  readonly now: Temporal.PlainDateTime;
  readonly left: Left;
  readonly time: string | undefined;
}

/** The hour where none is said; common practice, no source. */
const USUAL_TIME = '09:00';
/** An hour of the day, with the words that lead to it. */
export const TIME = new RegExp(
  String.raw`,? ?(?:\b(?:at|by) |@ ?)?(?<![\d:.])\b(${CLOCK}|noon|midnight)\b(?!:)`,
  'i',
);

/** Finds a pattern in what is left and takes it out. */
export function take(left: Left, pattern: RegExp): readonly string[] | undefined {
  const found = new RegExp(pattern.source, 'i').exec(left.text);
  if (found !== null) left.text = without(left.text, found[0]);
  return found ?? undefined;
}

export function without(text: string, words: string): string {
  return text.replace(words, ' ').replace(/\s+/g, ' ').trim();
}

/** "7pm" -> "19:00". @throws Problem for an hour that is not on the clock. */
export function clockTime(said: string, field: string, given: string): string {
  const text = said.toLowerCase();
  const special = { noon: { hour: 12, minute: 0 }, midnight: { hour: 0, minute: 0 } }[text];
  const time = special ?? readClock(text);
  if (time === undefined || time.hour > 23 || time.minute > 59) throw noSuchDate(field, given);
  return `${String(time.hour).padStart(2, '0')}:${String(time.minute).padStart(2, '0')}`;
}

/** The hour said, or the usual one, which is noted. */
export function usual({ time, left, usualTime = USUAL_TIME }: Scope): string {
  if (time === undefined) left.notes.push(`no hour given, taken as ${usualTime}`);
  return time ?? usualTime;
}

export function unreadable(field: string, given: string): Problem {
  return new Problem(say('parse.noRepeat'), { field, given, hint: say('parse.hintRepeats') });
}
