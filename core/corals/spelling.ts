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

interface Letters {
  readonly spelling: string;
  readonly sound: string;
  readonly letters: number;
  readonly soundLetters: number;
}

interface Spelling extends Letters {
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
].map(([spelling, right]) => ({ ...lettersOf(spelling, soundOf(spelling)), right }));

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
  const asked = lettersOf(word, soundOf(word));
  const most = mostApart(word);
  const ranked = spellings.map((known) => ({
    right: known.right,
    away: apart(asked, known, most) + (known.right.length > 1 ? 1 : 0),
  }));
  const away = Math.min(...ranked.map((one) => one.away));
  return away > most
    ? { like: [], away }
    : { like: ranked.filter((one) => one.away === away).map(({ right }) => right), away };
}

/** How far apart two words are; infinite where it is more than `most`, which is often plain from their letters alone. */
function apart(asked: Letters, known: Spelling, most: number): number {
  const { spelling, sound, letters, soundLetters } = asked;
  const bySpelling =
    leastApart(spelling, letters, known.spelling, known.letters) > most
      ? Infinity
      : editDistance(spelling, known.spelling);
  const bySound =
    leastApart(sound, soundLetters, known.sound, known.soundLetters) + 0.5 > most
      ? Infinity
      : editDistance(sound, known.sound) + 0.5;
  return Math.min(bySpelling, bySound);
}

/** No fewer changes than this lead from one text to the other: one for each letter of length, one for two unlike letters. */
function leastApart(one: string, oneLetters: number, other: string, otherLetters: number): number {
  return Math.max(Math.abs(one.length - other.length), Math.ceil(bitsIn(oneLetters ^ otherLetters) / 2));
}

/** Which letters of a to z occur, one bit each. */
function lettersIn(text: string): number {
  let bits = 0;
  for (let i = 0; i < text.length; i++) {
    const letter = text.charCodeAt(i) - 97;
    if (letter >= 0 && letter < 26) bits |= 1 << letter;
  }
  return bits;
}

function bitsIn(bits: number): number {
  let count = 0;
  for (let left = bits; left !== 0; left &= left - 1) count++;
  return count;
}

function lettersOf(spelling: string, sound: string): Letters {
  return { spelling, sound, letters: lettersIn(spelling), soundLetters: lettersIn(sound) };
}

/** How far a word may be from a name: not at all at three letters, in sound alone at four, then 1, 2 and 2.5. */
function mostApart(word: string): number {
  if (word.length <= 3) return 0;
  if (word.length === 4) return 0.5;
  if (word.length === 5) return 1;
  return word.length <= 8 ? 2 : 2.5;
}
