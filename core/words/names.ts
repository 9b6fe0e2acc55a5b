import { compounds, findCompound } from '../dosing/compound.ts';
import { parameter, parameterIds, type ParameterId } from '../water/parameter.ts';

/** A name found in free text and where it stands. */
export interface Named<T> {
  readonly name: T;
  readonly start: number;
  readonly end: number;
}

const escape = (text: string): string => text.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&');

function alternatives(words: readonly string[]): string {
  return [...new Set(words)]
    .sort((a, b) => b.length - a.length)
    .map(escape)
    .join('|');
}

/** What members call a compound beyond its own list; "kalk" and "lime" stand alone in prose. */
const compoundWords = compounds.flatMap(({ name, names, loose }) => [
  name,
  ...names,
  ...Object.keys(loose ?? {}),
]);
const COMPOUND = new RegExp(String.raw`(?<![a-z0-9])(${alternatives(compoundWords)})(?![a-z0-9])`, 'g');

/** Compound names in the text, as written there. */
export function compoundsIn(text: string): Named<string>[] {
  return [...text.matchAll(COMPOUND)].map((match) => ({
    name: match[0],
    start: match.index,
    end: match.index + match[0].length,
  }));
}

/** What a compound of that name is dosed for, in any of its forms. */
export function raisedBy(word: string): readonly ParameterId[] {
  const found = findCompound(word);
  if (found === undefined) return [];
  return 'raises' in found ? found.raises : found.flatMap((form) => form.raises);
}

/** One-letter and everyday words are no parameter names in a sentence. */
const NOT_IN_PROSE = new Set(['k', 'tan', 'iod']);
/** A salinity is heard by its own numbers: "1.025", "35 ppt". */
const NAMED = parameterIds.filter((id) => parameter(id).kind !== 'salinity');
const byWord = new Map<string, ParameterId>(
  NAMED.flatMap((id) =>
    parameter(id)
      .names.filter((name) => !NOT_IN_PROSE.has(name))
      .map((name) => [name, id]),
  ),
);
/** "calcium reactor" is equipment; "mg/l" is a unit; "5 mg" was taken as a mass before. */
const PARAMETER = new RegExp(
  String.raw`(?<![a-z0-9])(${alternatives([...byWord.keys()])})(?![a-z0-9])(?!\/l|\s+reactor)`,
  'g',
);

/** Parameter names in the text that do not lie inside one of the `taken` spans. */
export function parametersIn(
  text: string,
  taken: readonly { start: number; end: number }[],
): Named<ParameterId>[] {
  return [...text.matchAll(PARAMETER)].flatMap((match) => {
    const id = byWord.get(match[0]);
    const start = match.index;
    if (id === undefined || taken.some((span) => start >= span.start && start < span.end)) return [];
    return [{ name: id, start, end: start + match[0].length }];
  });
}
