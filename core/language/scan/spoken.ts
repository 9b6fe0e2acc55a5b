/** A number said in words, and how many words it took. `text` has the decimals as they were said. */
export interface Spoken {
  readonly value: number;
  readonly text: string;
  readonly words: number;
}

/** A table without what every object has, so that "constructor" is none of its words. */
function tableOf(of: Readonly<Record<string, number>>): Readonly<Record<string, number>> {
  return Object.assign(Object.create(null) as Record<string, number>, of);
}

const ONES = tableOf({
  zero: 0,
  zeros: 0,
  nil: 0,
  undetectable: 0,
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
});
const TEENS = tableOf({
  ten: 10,
  eleven: 11,
  twelve: 12,
  thirteen: 13,
  fourteen: 14,
  fifteen: 15,
  sixteen: 16,
  seventeen: 17,
  eighteen: 18,
  nineteen: 19,
});
const TENS = tableOf({
  twenty: 20,
  thirty: 30,
  forty: 40,
  fourty: 40,
  fifty: 50,
  sixty: 60,
  seventy: 70,
  eighty: 80,
  ninety: 90,
});
/** What dictation makes of a digit: only inside a number that has begun. */
const MISHEARD = tableOf({
  oh: 0,
  o: 0,
  won: 1,
  to: 2,
  too: 2,
  for: 4,
  fore: 4,
  ate: 8,
});
const PARTS = tableOf({ half: 0.5, quarter: 0.25, third: 1 / 3 });
/** Only behind an article: "the fifth" is one of a row. */
const SMALL_PARTS = tableOf({ fourth: 0.25, fifth: 0.2, eighth: 0.125, tenth: 0.1 });
const COUNTS = tableOf({ once: 1, twice: 2, thrice: 3, double: 2, triple: 3 });

type Words = readonly string[];

/**
 * The number said from a word on: "four twenty" 420, "eight point two" 8.2, "one oh two five" 1.025, "twelve hundred" 1200,
 * "seven and a half" 7.5, "a couple" 2, "half" 0.5; undefined where none begins.
 */
export function spoken(words: Words, at: number): Spoken | undefined {
  return (
    ofGravity(words, at) ??
    pointOnly(words, at) ??
    withFraction(words, at, whole(words, at)) ??
    article(words, at) ??
    single(words, at)
  );
}

/** Whether a word can begin a number in words: most words are passed by this. */
export function beginsNumber(word: string): boolean {
  return (
    word in ONES ||
    word in TEENS ||
    word in TENS ||
    word in PARTS ||
    word in COUNTS ||
    word === 'a' ||
    word === 'an' ||
    word === 'point' ||
    word === 'hundred' ||
    word === 'ate'
  );
}

function digit(word: string | undefined): number | undefined {
  if (word === undefined) return undefined;
  return ONES[word] ?? MISHEARD[word];
}

/** 1 to 99 in one or two words. */
function below100(words: Words, at: number): Spoken | undefined {
  const word = words[at] ?? '';
  const tens = TENS[word];
  if (tens !== undefined) {
    const one = ONES[words[at + 1] ?? ''] ?? (words[at + 1] === 'ate' ? 8 : undefined);
    return one === undefined || one === 0 ? said(tens, 1) : said(tens + one, 2);
  }
  const small = TEENS[word] ?? ONES[word];
  return small === undefined ? undefined : said(small, 1);
}

function whole(words: Words, at: number): Spoken | undefined {
  const bare = words[at] === 'hundred' || words[at] === 'thousand';
  const first = bare ? said(1, 0) : words[at] === 'ate' ? ate(words, at) : below100(words, at);
  if (first === undefined) return undefined;
  const behind = words[at + first.words];
  if (behind === 'hundred' || behind === 'thousand') {
    const size = behind === 'hundred' ? 100 : 1000;
    const joined = words[at + first.words + 1] === 'and' ? 2 : 1;
    const rest = below100(words, at + first.words + joined);
    const more = behind === 'thousand' ? (whole(words, at + first.words + joined) ?? rest) : rest;
    return more === undefined || more.value >= size
      ? said(first.value * size, first.words + 1)
      : said(first.value * size + more.value, first.words + joined + more.words);
  }
  const second = below100(words, at + first.words);
  if (first.value >= 1 && first.value < 20 && second !== undefined && second.value >= 10)
    return said(first.value * 100 + second.value, first.words + second.words);
  return first;
}

/** "ate point six": eight, where a point or a unit of tens follows. */
function ate(words: Words, at: number): Spoken | undefined {
  return words[at + 1] === 'point' ? said(8, 1) : undefined;
}

function withFraction(words: Words, at: number, base: Spoken | undefined): Spoken | undefined {
  if (base === undefined) return undefined;
  const end = at + base.words;
  if (words[end] === 'point') {
    const behind = decimals(words, end + 1);
    if (behind !== undefined) return fromText(`${base.value}.${behind.text}`, base.words + 1 + behind.words);
  }
  if (words[end] === 'and') {
    const isArticle = words[end + 1] === 'a';
    const part = PARTS[words[end + (isArticle ? 2 : 1)] ?? ''];
    if (part !== undefined && part !== 1 / 3)
      return said(base.value + part, base.words + (isArticle ? 3 : 2));
  }
  return base;
}

/** "point five". */
function pointOnly(words: Words, at: number): Spoken | undefined {
  if (words[at] !== 'point') return undefined;
  const behind = decimals(words, at + 1);
  return behind === undefined ? undefined : fromText(`0.${behind.text}`, behind.words + 1);
}

function decimals(words: Words, at: number): { text: string; words: number } | undefined {
  let text = '';
  let count = 0;
  for (let next = at; count < 4; next++, count++) {
    const one = digit(words[next]);
    if (one === undefined) break;
    text += String(one);
  }
  const more = below100(words, at + count);
  if (more !== undefined && more.value >= 10)
    return { text: text + String(more.value), words: count + more.words };
  return count === 0 ? undefined : { text, words: count };
}

/** "one oh two five", "one point oh two six", "ten twenty five": a specific gravity. */
function ofGravity(words: Words, at: number): Spoken | undefined {
  if (words[at] === 'ten') {
    const behind = below100(words, at + 1);
    if (behind !== undefined && behind.value >= 18 && behind.value <= 35)
      return fromText(`1.0${behind.value}`, 1 + behind.words);
    return undefined;
  }
  if (words[at] !== 'one') return undefined;
  const start = words[at + 1] === 'point' ? at + 2 : at + 1;
  if (digit(words[start]) !== 0) return undefined;
  const behind = decimals(words, start);
  return behind === undefined || behind.words < 2
    ? undefined
    : fromText(`1.${behind.text}`, start - at + behind.words);
}

/** "a couple of", "a dozen", "a hundred and fifty", "a third", "half a", "a half". */
function article(words: Words, at: number): Spoken | undefined {
  if (words[at] !== 'a' && words[at] !== 'an') return undefined;
  const next = words[at + 1] ?? '';
  if (next === 'couple') return said(2, words[at + 2] === 'of' ? 3 : 2);
  if (next === 'dozen') return said(12, 2);
  if (next === 'hundred' || next === 'thousand') {
    const behind = whole(words, at + 1);
    return behind === undefined ? undefined : { ...behind, words: behind.words + 1 };
  }
  const part = PARTS[next] ?? SMALL_PARTS[next];
  return part === undefined ? undefined : said(part, 2);
}

function single(words: Words, at: number): Spoken | undefined {
  const word = words[at] ?? '';
  const value = PARTS[word] ?? COUNTS[word];
  if (value === undefined || word === 'third') return undefined;
  return said(value, word === 'half' && /^an?$/.test(words[at + 1] ?? '') ? 2 : 1);
}

function said(value: number, words: number): Spoken {
  return { value, text: String(Number(value.toFixed(4))), words };
}

function fromText(text: string, words: number): Spoken {
  return { value: Number(text), text, words };
}
