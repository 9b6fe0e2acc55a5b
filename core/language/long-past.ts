import { classesIn } from './lexicon/classes.ts';
import { sentenceEnds, type Scanned, type Token } from './tokens.ts';

/** Spans that are long past behind a number: "two summers ago", "3 years back". Grammar: nothing is learnt of them. */
const SPAN = /^(?:year|summer|winter|spring|autumn|season|month|decade)s?$/;
const AGO: ReadonlySet<string> = new Set(['ago', 'back']);
/** Years of a century that is told of as "back in 2019"; a bare "in" may be the year it is. */
const YEAR = /^(?:19|20)\d\d$/;

/** Whether the sentence a place stands in tells of what is months or years past. */
export function isLongPast({ text, tokens }: Scanned, start: number): boolean {
  const sentence = sentenceAt(tokens, start);
  const [first, last] = [sentence[0]?.start ?? 0, sentence.at(-1)?.end ?? 0];
  const words = sentence.map(({ word }) => word);
  return (
    classesIn(words).some((names) => names.includes('times.longAgo')) ||
    // A number and its unit are one token: "3 years".
    /\d (?:year|summer|winter|month)s? (?:ago|back)\b/.test(text.slice(first, last)) ||
    words.some((word, at) => SPAN.test(word) && AGO.has(words[at + 1] ?? '')) ||
    words.some((word, at) => word === 'back' && words[at + 1] === 'in' && YEAR.test(words[at + 2] ?? ''))
  );
}

function sentenceAt(tokens: readonly Token[], start: number): readonly Token[] {
  const before = tokens.findLastIndex((token) => token.end <= start && isEnd(token));
  const after = tokens.findIndex((token) => token.start >= start && isEnd(token));
  return tokens.slice(before + 1, after < 0 ? undefined : after);
}

function isEnd({ word }: Token): boolean {
  return sentenceEnds.has(word);
}
