import { editDistance } from '../edit-distance.ts';
import { indexedNames, properWords } from './name-index.ts';
import { soundOf } from './name-words.ts';
import { genusWords, unpagedGenera } from './unpaged.ts';

/** What a row of words can have been meant as: the nearest readings in the guide. */
export interface Respelt {
  readonly readings: readonly (readonly string[])[];
  /** Words of real genera without a page, where nothing is nearer to a word, the nearest first. */
  readonly genera: readonly string[];
  /** Whether every word is a short way from its reading, and no real genus less than twice as far: one alone may be taken. */
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
  readonly of: 'coral' | 'genus' | 'genus without a page';
}

/** Every word of a name as written, and two neighbours written as one ("bubbletip"). */
const spellings: readonly Spelling[] = [
  ...new Map<string, readonly string[]>([
    ...indexedNames
      .filter(({ kind }) => kind !== 'misspelt')
      .flatMap(({ words }) => pairs(words))
      .map((pair): [string, readonly string[]] => [pair.join(''), pair]),
    ...[...properWords, ...unpagedGenera.keys()].map((word): [string, readonly string[]] => [word, [word]]),
  ]),
].map(([spelling, right]) => ({
  ...lettersOf(spelling, soundOf(spelling)),
  right,
  of: unpagedGenera.has(spelling) ? 'genus without a page' : genusWords.has(spelling) ? 'genus' : 'coral',
}));

const genusSpellings = spellings.filter(({ of }) => of !== 'coral');

function pairs(words: readonly string[]): readonly (readonly string[])[] {
  return words.slice(1).map((_, index) => words.slice(index, index + 2));
}

/** Reads misspelt words as words of coral names. Words that are right stay. Undefined when one is like no name. */
export function respell(words: readonly string[]): Respelt | undefined {
  let readings: readonly (readonly string[])[] = [[]];
  let close = true;
  const genera: string[] = [];
  for (const word of words) {
    const nearest = nearestWords(word);
    if (nearest === undefined) return undefined;
    close &&= nearest.away <= (word.length > 6 ? 2 : 1) && !nearest.rivalled;
    genera.push(...nearest.genera);
    readings = readings.flatMap((reading) => nearest.like.map((right) => [...reading, ...right]));
    if (readings.length > MAX_READINGS) return undefined;
  }
  return { readings, genera, close };
}

interface Nearest {
  readonly like: readonly (readonly string[])[];
  /** Where nothing is nearer than a real genus without a page: that one, and others less than twice as far. */
  readonly genera: readonly string[];
  /** Where a coral of the guide is nearest: whether such a genus is less than twice as far. */
  readonly rivalled: boolean;
  readonly away: number;
}

/**
 * Every word at the least distance: by letters, or by sound, which counts for half a letter. Two words count one more.
 * A real genus less than twice as far is as good a reading, so that none is ever taken for another.
 */
function nearestWords(word: string): Nearest | undefined {
  if (properWords.has(word)) return { like: [[word]], genera: [], rivalled: false, away: 0 };
  const asked = lettersOf(word, soundOf(word));
  const nearest = within(spellings, asked, mostApart(word));
  const away = Math.min(...nearest.map((one) => one.away));
  if (away === Infinity) return undefined;
  const best = nearest.filter((one) => one.away === away);
  const rivals = within(genusSpellings, asked, 2 * away).filter(
    (one) => one.away > away && one.away < 2 * away,
  );
  const now = new Set([...best, ...rivals].flatMap(({ right }) => right));
  const unpaged = [...best, ...rivals].filter(
    ({ of, right }) => of === 'genus without a page' && !isOlderNameOf(right, now),
  );
  const isUnpaged = best.some((one) => unpaged.includes(one));
  return {
    like: [...best, ...rivals].filter(({ of }) => of !== 'genus without a page').map(({ right }) => right),
    genera: isUnpaged ? unpaged.flatMap(({ right }) => right) : [],
    rivalled: !isUnpaged && unpaged.length > 0,
    away,
  };
}

/** An older name is no other genus than the one its species are in now. */
function isOlderNameOf([word = '']: readonly string[], words: ReadonlySet<string>): boolean {
  const now = unpagedGenera.get(word)?.now?.toLowerCase();
  return now !== undefined && properWords.has(now) && words.has(now);
}

interface Ranked {
  readonly right: readonly string[];
  readonly of: Spelling['of'];
  readonly away: number;
}

/** The spellings at most `most` away. */
function within(among: readonly Spelling[], asked: Letters, most: number): readonly Ranked[] {
  return among
    .map((known) => ({
      right: known.right,
      of: known.of,
      away: apart(asked, known, most) + (known.right.length > 1 ? 1 : 0),
    }))
    .filter(({ away }) => away <= most);
}

/** How far apart two words are; infinite where it is more than `most`, which is often plain from their letters alone. */
function apart(asked: Letters, known: Letters, most: number): number {
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
