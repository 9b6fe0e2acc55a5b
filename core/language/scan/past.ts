import type { Scanned, Token } from '../tokens.ts';

/** Where a time stands in a message. */
export interface TimeSpan {
  readonly start: number;
  readonly end: number;
}

/** Words that stand inside a time: "last night at 10", "the day before yesterday". */
const INSIDE: ReadonlySet<string> = new Set(
  'at on in the around about last this earlier early late before day of from , - :'.split(' '),
);
const AGO: ReadonlySet<string> = new Set(['ago', 'back']);
/** Times of the past that are no moment of the scanner. */
const ALONE: ReadonlySet<string> = new Set(['overnight', 'earlier']);

/**
 * The stretch of a message that says when, nearest to a place of it: "last night", "2 days ago", "yesterday at 8", "this
 * morning". Undefined where none does. Check: "save alk 8.3 from last night" -> "last night".
 */
export function timeIn({ tokens }: Scanned, near = 0): TimeSpan | undefined {
  const times = tokens.map((_, at) => isTime(tokens, at));
  const first = nearestOf(times, tokens, near);
  if (first === undefined) return undefined;
  let last = first;
  for (let at = first + 1; at < tokens.length; at++) {
    if (times[at] === true || isHour(tokens, at)) last = at;
    else if (!INSIDE.has(tokens[at]?.word ?? '')) break;
  }
  let from = first;
  while (from > 0 && (times[from - 1] === true || isHourOrInside(tokens, from - 1))) from--;
  while (
    from < first &&
    times[from] !== true &&
    tokens[from]?.number === undefined &&
    !KEPT.has(tokens[from]?.word ?? '')
  )
    from++;
  const [start, end] = [tokens[from]?.start, tokens[last]?.end];
  return start === undefined || end === undefined ? undefined : { start, end };
}

/** Another sentence is farther than any word of its own. */
const SENTENCE = 100;
const ENDS: ReadonlySet<string> = new Set(['.', '!', '?']);

/** The time with the fewest words between it and a place, those of its own sentence first. */
function nearestOf(times: readonly boolean[], tokens: readonly Token[], near: number): number | undefined {
  const place = Math.max(
    0,
    tokens.findLastIndex(({ start }) => start <= near),
  );
  const far = (at: number): number => {
    const between = tokens.slice(Math.min(at, place), Math.max(at, place));
    return between.length + SENTENCE * between.filter(({ word }) => ENDS.has(word)).length;
  };
  return times.flatMap((isOne, at) => (isOne ? [at] : [])).toSorted((a, b) => far(a) - far(b))[0];
}

/** Words a time may begin with. */
const KEPT: ReadonlySet<string> = new Set(['at', 'last', 'this', 'the', 'day', 'before', 'earlier']);

function isTime(tokens: readonly Token[], at: number): boolean {
  const token = tokens[at];
  if (token === undefined) return false;
  if (AGO.has(token.word) || ALONE.has(token.word)) return true;
  if (token.number?.kinds.includes('moment') === true) return true;
  return token.number?.kinds.includes('days') === true && AGO.has(tokens[at + 1]?.word ?? '');
}

/** "at 8" beside a time. */
function isHour(tokens: readonly Token[], at: number): boolean {
  const number = tokens[at]?.number;
  return number !== undefined && number.kinds.length === 0 && tokens[at - 1]?.word === 'at';
}

function isHourOrInside(tokens: readonly Token[], at: number): boolean {
  const token = tokens[at];
  return (
    token !== undefined && (isHour(tokens, at) || (token.number === undefined && INSIDE.has(token.word)))
  );
}
