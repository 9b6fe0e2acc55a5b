import { indexedNames } from '../corals/name-index.ts';
import { nameWords, telling } from '../corals/name-words.ts';
import { unpagedGenera } from '../corals/unpaged.ts';
import { compounds } from '../dosing/compound.ts';
import { parameter, parameterIds } from '../water/parameter.ts';
import type { NumberSpan } from './scan/number-span.ts';
import { everydayCoralWords } from './lexicon/everyday-coral-words.ts';
import { isNearCoral } from './near-coral.ts';

/** A name of something the house knows, where it stands in a message. `id`: a parameter's, the salt's own word, a coral's key. */
export interface NameSpan {
  readonly class: 'parameter' | 'salt' | 'coral';
  readonly id: string;
  readonly start: number;
  readonly end: number;
}

const escape = (text: string): string => text.replace(/[.*+?^${}()|[\]\\/]/g, String.raw`\$&`);

function oneOf(words: Iterable<string>): string {
  return [...new Set(words)]
    .sort((a, b) => b.length - a.length)
    .map(escape)
    .join('|');
}

const saltWords = compounds.flatMap(({ name, names, loose }) => [
  name,
  ...names,
  ...Object.keys(loose ?? {}),
]);
const SALT = new RegExp(String.raw`(?<![a-z0-9])(?:${oneOf(saltWords)})(?![a-z0-9])`, 'g');

/** One-letter and everyday words are no parameter names in a sentence. */
const NOT_IN_PROSE = new Set(['k', 'tan', 'iod', 'br', 'sr']);
const parameterOf = new Map(
  parameterIds.flatMap((id) =>
    parameter(id)
      .names.filter((name) => !NOT_IN_PROSE.has(name))
      .map((name): [string, string] => [name, id]),
  ),
);
/** "calcium reactor" is equipment; "mg/l" is a unit. */
const PARAMETER = new RegExp(
  String.raw`(?<![a-z0-9])(?:${oneOf(parameterOf.keys())})(?![a-z0-9])(?!\/l|\s+reactor)`,
  'g',
);

/** Names of the guide, and real genera without a page in it. */
const coralKeys: ReadonlySet<string> = new Set([
  ...indexedNames.map(({ key }) => key),
  ...unpagedGenera.keys(),
]);
const LONGEST_CORAL = 4;
const WORD = /[\p{L}'-]+/gu;

/** Names in a folded text, in order; none inside a number's unit or inside another. */
export function namesIn(text: string, numbers: readonly NumberSpan[]): readonly NameSpan[] {
  const taken: { start: number; end: number }[] = [...numbers];
  const found: NameSpan[] = [];
  const take = (spans: Iterable<NameSpan>): void => {
    for (const span of spans) {
      if (taken.some((other) => span.start < other.end && other.start < span.end)) continue;
      taken.push(span);
      found.push(span);
    }
  };
  take(saltsIn(text));
  take(coralsIn(text, numbers));
  take(parametersIn(text));
  return found.sort((a, b) => a.start - b.start);
}

function* saltsIn(text: string): Iterable<NameSpan> {
  for (const match of text.matchAll(SALT))
    yield { class: 'salt', id: match[0], start: match.index, end: match.index + match[0].length };
}

function* parametersIn(text: string): Iterable<NameSpan> {
  for (const match of text.matchAll(PARAMETER)) {
    const id = parameterOf.get(match[0]);
    if (id !== undefined)
      yield { class: 'parameter', id, start: match.index, end: match.index + match[0].length };
  }
}

/**
 * Whole names of corals, the longest at each place that holds no number; an everyday word ("plate") needs "coral" beside
 * it. Where none stands as it is known to be written, one word that is near to a telling name.
 */
function coralsIn(text: string, numbers: readonly NumberSpan[]): readonly NameSpan[] {
  const words = [...text.matchAll(WORD)].map((match): Word => {
    const start = match.index;
    const end = start + match[0].length;
    const isNumber = numbers.some((number) => number.start < end && start < number.end);
    return { start, end, word: match[0], telling: isNumber ? undefined : telling(nameWords(match[0])) };
  });
  const found: NameSpan[] = [];
  for (let at = 0; at < words.length; at++) {
    const length = longestAt(words, at);
    if (length === 0) continue;
    found.push(spanOf(text, words[at], words[at + length - 1]));
    at += length - 1;
  }
  if (found.length > 0) return found;
  const near = words.find(({ word, telling: own }) => own !== undefined && isNearCoral(word));
  return near === undefined ? [] : [spanOf(text, near, near)];
}

interface Word {
  readonly start: number;
  readonly end: number;
  readonly word: string;
  /** What of it tells corals apart; undefined inside a number. */
  readonly telling: readonly string[] | undefined;
}

function spanOf(text: string, first: Word | undefined, last: Word | undefined): NameSpan {
  const [start, end] = [first?.start ?? 0, last?.end ?? 0];
  return { class: 'coral', id: text.slice(start, end), start, end };
}

function longestAt(words: readonly Word[], at: number): number {
  if ((words[at]?.telling?.length ?? 0) === 0) return 0;
  for (let length = Math.min(LONGEST_CORAL, words.length - at); length > 0; length--) {
    const part = words.slice(at, at + length);
    const last = part.at(-1);
    if ((last?.telling?.length ?? 0) === 0 && !/^corals?$/.test(last?.word ?? '')) continue;
    if (part.some(({ telling: own }) => own === undefined)) continue;
    const key = part.flatMap(({ telling: own }) => own ?? []).join('');
    // "Me at" is no meat coral: an everyday word, whole or in parts, needs "coral" beside it.
    if (!/^corals?$/.test(last?.word ?? '') && everydayCoralWords.has(key)) continue;
    if (coralKeys.has(key)) return length;
  }
  return 0;
}
