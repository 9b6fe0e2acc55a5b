import { indexedNames } from '../corals/name-index.ts';
import { nameWords, telling } from '../corals/name-words.ts';
import { compounds } from '../dosing/compound.ts';
import { parameter, parameterIds } from '../water/parameter.ts';
import type { NumberSpan } from './scan/number-span.ts';
import { everydayCoralWords } from './lexicon/everyday-coral-words.ts';

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

const coralKeys: ReadonlySet<string> = new Set(indexedNames.map(({ key }) => key));
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
  take(coralsIn(text));
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

/** Whole names of corals, the longest at each place; an everyday word ("plate") needs "coral" beside it. */
function* coralsIn(text: string): Iterable<NameSpan> {
  const places = [...text.matchAll(WORD)];
  const tellings = places.map(([word]) => telling(nameWords(word)));
  for (let at = 0; at < places.length; at++) {
    const length = longestAt(places, tellings, at);
    if (length === 0) continue;
    const first = places[at];
    const last = places[at + length - 1];
    if (first === undefined || last === undefined) continue;
    const end = last.index + last[0].length;
    yield { class: 'coral', id: text.slice(first.index, end), start: first.index, end };
    at += length - 1;
  }
}

function longestAt(
  places: readonly RegExpExecArray[],
  tellings: readonly (readonly string[])[],
  at: number,
): number {
  if ((tellings[at]?.length ?? 0) === 0) return 0;
  for (let length = Math.min(LONGEST_CORAL, places.length - at); length > 0; length--) {
    const isCoral = /^corals?$/.test(places[at + length - 1]?.[0] ?? '');
    if ((tellings[at + length - 1]?.length ?? 0) === 0 && !isCoral) continue;
    const key = tellings
      .slice(at, at + length)
      .flat()
      .join('');
    // "Me at" is no meat coral: an everyday word, whole or in parts, needs "coral" beside it.
    if (!isCoral && everydayCoralWords.has(key)) continue;
    if (coralKeys.has(key)) return length;
  }
  return 0;
}
