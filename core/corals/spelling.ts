import { editDistance } from '../words/edit-distance.ts';
import { indexedNames, properWords } from './name-index.ts';
import { soundOf } from './name-words.ts';

/** What a row of words can have been meant as: every reading is equally near. */
export interface Respelt {
  readonly readings: readonly (readonly string[])[];
  /** Whether every word is a short way from its reading, so that one reading alone may be taken. */
  readonly close: boolean;
}

/** More readings than this say nothing. */
const MAX_READINGS = 12;

interface Spelling {
  readonly spelling: string;
  readonly sound: string;
  readonly right: readonly string[];
}

/** Every word of a name as written, and two neighbours written as one ("bubbletip"). */
const spellings: readonly Spelling[] = [
  ...new Map([
    ...indexedNames
      .filter(({ kind }) => kind !== 'misspelt')
      .flatMap(({ words }) => pairs(words))
      .map((pair): [string, readonly string[]] => [pair.join(''), pair]),
    ...[...properWords].map((word): [string, readonly string[]] => [word, [word]]),
  ]),
].map(([spelling, right]) => ({ spelling, sound: soundOf(spelling), right }));

function pairs(words: readonly string[]): readonly (readonly string[])[] {
  return words.slice(1).map((_, index) => words.slice(index, index + 2));
}

/** Reads misspelt words as words of coral names. Words that are right stay. Undefined when one is like no name. */
export function respell(words: readonly string[]): Respelt | undefined {
  let readings: readonly (readonly string[])[] = [[]];
  let close = true;
  for (const word of words) {
    const { like, away } = nearestWords(word);
    if (like.length === 0) return undefined;
    close &&= away <= (word.length > 6 ? 2 : 1);
    readings = readings.flatMap((reading) => like.map((right) => [...reading, ...right]));
    if (readings.length > MAX_READINGS) return undefined;
  }
  return { readings, close };
}

/** Every word at the least distance: by letters, or by sound, which counts for half a letter. Two words count one more. */
function nearestWords(word: string): { like: readonly (readonly string[])[]; away: number } {
  if (properWords.has(word)) return { like: [[word]], away: 0 };
  const sound = soundOf(word);
  const ranked = spellings.map((known) => ({
    right: known.right,
    away: apart(word, sound, known) + (known.right.length > 1 ? 1 : 0),
  }));
  const away = Math.min(...ranked.map((one) => one.away));
  return away > mostApart(word)
    ? { like: [], away }
    : { like: ranked.filter((one) => one.away === away).map(({ right }) => right), away };
}

function apart(word: string, sound: string, known: Spelling): number {
  if (Math.abs(word.length - known.spelling.length) > 3) return Infinity;
  return Math.min(editDistance(word, known.spelling), editDistance(sound, known.sound) + 0.5);
}

/** How far a word may be from a name: not at all at three letters, in sound alone at four, then 1, 2 and 2.5. */
function mostApart(word: string): number {
  if (word.length <= 3) return 0;
  if (word.length === 4) return 0.5;
  if (word.length === 5) return 1;
  return word.length <= 8 ? 2 : 2.5;
}
