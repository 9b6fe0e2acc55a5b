import { sayInstant } from '../core/schedule/say.ts';
import { localTime } from '../core/words/when.ts';
import type { Answer, Fact } from './answer.ts';
import { withSentences } from './sentences.ts';

/** A moment that a text tells by the clock of an IANA zone, in the words of `sayInstant` or of `localTime`. */
export interface Instant {
  readonly atMs: number;
  readonly zone: string;
}

/** An answer whose sentences tell each of its instants as `show` writes it, and in no other way. */
export function withInstants<Given extends Answer>(given: Given, show: (atMs: number) => string): Given {
  const told = [...(given.instants ?? []), ...given.facts.flatMap(instantsOf)].filter(isDate);
  if (told.length === 0) return given;
  const swaps = told.flatMap(({ atMs, zone }) =>
    [sayInstant(atMs, zone), localTime(atMs, zone)].map((words) => ({ words, zone, atMs })),
  );
  return withSentences(given, (text) =>
    swaps.reduce((line, { words, zone, atMs }) => swapped(line, words, zone, show(atMs)), text),
  );
}

/** The last instant a date can hold, ms (ECMAScript 21.4.1.1). */
const LAST_MS = 8.64e15;

function isDate({ atMs }: Instant): boolean {
  return Math.abs(atMs) <= LAST_MS;
}

function instantsOf({ instant }: Fact): readonly Instant[] {
  return instant === undefined ? [] : [instant];
}

/** What names the zone behind it goes with the words: it is not the zone of the stamp. */
function swapped(line: string, words: string, zone: string, shown: string): string {
  const named = [` (${zone})`, ` (times by the clock of ${zone})`].map((tail) => words + tail);
  return [...named, words].reduce((text, each) => text.replaceAll(each, () => shown), line);
}
