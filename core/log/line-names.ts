import { clean } from '../quantity/clean.ts';
import { findParameter, type ParameterId, parameter, parameterIds } from '../water/parameter.ts';

/** A name on a line of readings and where it stands. */
export interface NameOnLine {
  readonly id: ParameterId;
  readonly word: string;
  readonly start: number;
  readonly end: number;
}

/** Words that name salinity on such a line without saying its scale. */
const BARE_SALINITY = ['salt', 'density'];
const NAMES = [...parameterIds.flatMap((id) => parameter(id).names), ...BARE_SALINITY]
  .sort((a, b) => b.length - a.length)
  .map((name) => name.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'))
  .join('|');
const NAME = new RegExp(String.raw`(?<![a-z0-9µ])(?:${NAMES})(?![a-z0-9])(?!/l\b)`, 'g');
const NAME_ON_NUMBER = new RegExp(String.raw`(?<![a-z0-9µ])(${NAMES})(?=\.?\d)`, 'g');
const NUMBER_ON_NAME = new RegExp(String.raw`(?<=\d)(?=(?:${NAMES})(?![a-z0-9/]))`, 'g');
const NAMED = new RegExp(String.raw`(?<=(?:^|[^a-z0-9])(?:${NAMES})) ?[:=]+ ?(?=[<~]? ?\.?\d)`, 'g');
/** A name with a number of its own behind it is not the unit of the number before it; "dkh" always is a unit. */
const NEXT_NAME = new RegExp(String.raw`(?<=\d) (?=(?!dkh)(?:${NAMES}) ?[<~]? ?\.?\d)`, 'g');

/** Sets names and numbers apart: "kh:8.2 ca420/ 8.1ph" becomes "kh 8.2, ca 420/ 8.1 ph". */
export function spaced(text: string): string {
  return clean(text)
    .replace(/(?<=\d) ?\/ ?(?=\.?\d)/g, '/')
    .replace(NAMED, ' ')
    .replace(NAME_ON_NUMBER, '$1 ')
    .replace(NUMBER_ON_NAME, ' ')
    .replace(NEXT_NAME, ', ');
}

/**
 * The names on a line, without those inside a `taken` span. A run of names of one parameter, "alk (kh)", is one;
 * `isGlue` tells what may stand in it.
 */
export function namesOn(
  line: string,
  taken: readonly { readonly start: number; readonly end: number }[],
  isGlue: (between: string) => boolean,
): readonly NameOnLine[] {
  const found: NameOnLine[] = [];
  for (const match of line.matchAll(NAME)) {
    const [word] = match;
    const start = match.index;
    const id = BARE_SALINITY.includes(word) ? 'salinity' : findParameter(word);
    if (id === undefined || taken.some((span) => start >= span.start && start < span.end)) continue;
    const last = found.at(-1);
    const isRun = last?.id === id && isGlue(line.slice(last.end, start));
    if (isRun) found.pop();
    found.push({ id, word, start: isRun ? last.start : start, end: start + word.length });
  }
  return found;
}

/** The scale a salinity's name says: "sg", "conductivity"; empty where it says none. */
export function scaleOfName(word: string | undefined): string {
  return word === undefined || BARE_SALINITY.includes(word) || word === 'gravity' ? '' : word;
}
