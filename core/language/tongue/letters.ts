/** Longest run of letters that is looked at. */
export const LONGEST_RUN = 4;

/** Stands before and behind every word. */
const EDGE = '_';
const WORD = /(?<![\p{L}\p{N}])\p{L}+(?:['’]\p{L}+)*(?![\p{L}\p{N}])/gu;
const MARK = /\p{M}/gu;
/** Letters whose mark no decomposition takes off, as they are typed on a keyboard without them. */
const PLAIN: Readonly<Record<string, string>> = { ß: 'ss', ł: 'l', ø: 'o', æ: 'ae', œ: 'oe', å: 'aa' };
const MARKED = /[ßłøæœå]/g;

/** Words of a text, lower case; what holds a digit ("no3", "10kg") is none. */
export function wordsOf(text: string): readonly string[] {
  return (text.normalize('NFC').toLowerCase().match(WORD) ?? []).map((word) => word.replaceAll("'", '’'));
}

/** The word as somebody types it who leaves out the marks. Check: "größe" -> "grosse". */
export function withoutMarks(word: string): string {
  return word
    .replace(MARKED, (letter) => PLAIN[letter] ?? letter)
    .normalize('NFD')
    .replace(MARK, '');
}

/** For each letter of a word and the edge behind it, the run of at most `LONGEST_RUN` that ends there. Check: "de" -> _d, _de, _de_. */
export function runsOf(word: string): readonly string[] {
  const whole = `${EDGE}${word}${EDGE}`;
  return Array.from({ length: whole.length - 1 }, (_, at) =>
    whole.slice(Math.max(0, at + 2 - LONGEST_RUN), at + 2),
  );
}
