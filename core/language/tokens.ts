import { MAX_MESSAGE_LENGTH } from '../message-length.ts';
import { fold } from './fold.ts';
import { namesIn, type NameSpan } from './names.ts';
import { numbersIn } from './scan/numbers.ts';
import type { NumberSpan } from './scan/number-span.ts';

/** A word of a message, or what stands for a number or a name in it. */
export interface Token {
  /** As it was written, folded. */
  readonly word: string;
  /** What is learnt of: the word, or `#kind` for a number, `#coral` or `#salt` for a name. */
  readonly mask: string;
  readonly start: number;
  readonly end: number;
  readonly number?: NumberSpan;
  readonly name?: NameSpan;
}

/** A message taken apart: its tokens, numbers and names, all in places of the text as it was written. */
export interface Scanned {
  readonly text: string;
  readonly tokens: readonly Token[];
  readonly numbers: readonly NumberSpan[];
  readonly names: readonly NameSpan[];
}

/** Marks behind which another sentence begins. */
export const sentenceEnds: ReadonlySet<string> = new Set(['.', '!', '?', ';']);

/** Where a number stands among the tokens, also one that was given a unit; -1 where it is no token of its own. */
export function placeOf(tokens: readonly Token[], { start }: NumberSpan): number {
  return tokens.findIndex((token) => token.start === start);
}

const TOKEN = /[\p{L}]+(?:'[\p{L}]+)?|\d+|[?!.,;:/%$€£()+=>-]|\p{Extended_Pictographic}/gu;

export function scan(given: string): Scanned {
  const text = fold(given.slice(0, MAX_MESSAGE_LENGTH));
  const numbers = numbersIn(text);
  const names = namesIn(text, numbers);
  const spans = [
    ...numbers.map((number) => ({ ...place(number), mask: maskOf(number), number })),
    ...names.map((name) => ({ ...place(name), mask: `#${name.class}`, name })),
  ].sort((a, b) => a.start - b.start);
  const tokens: Token[] = [];
  let next = 0;
  let covered = 0;
  for (const match of text.matchAll(TOKEN)) {
    const start = match.index;
    const end = start + match[0].length;
    while (next < spans.length && (spans[next]?.start ?? 0) < end) {
      const span = spans[next];
      next++;
      if (span === undefined || span.start < covered) continue;
      tokens.push({ ...span, word: text.slice(span.start, span.end) });
      covered = span.end;
    }
    if (start >= covered) tokens.push({ word: match[0], mask: match[0], start, end });
  }
  return { text, tokens, numbers, names };
}

function place({ start, end }: { start: number; end: number }): { start: number; end: number } {
  return { start, end };
}

/** A number becomes what its unit says it can be; a bare one its size. */
function maskOf({ kinds, value, form }: NumberSpan): string {
  if (form === 'moment') return '#moment';
  const [only, more] = kinds;
  if (only !== undefined)
    return more === undefined ? `#${only}` : `#${kinds.includes('volume') ? 'volume' : 'ppm'}`;
  if (value < 1) return '#bare0';
  if (value < 20) return Number.isInteger(value) ? '#bare1' : '#bare1.5';
  return value < 200 ? '#bare2' : '#bare3';
}
