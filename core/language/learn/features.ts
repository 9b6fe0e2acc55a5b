import { classesIn } from '../lexicon/classes.ts';
import type { Scanned, Token } from '../tokens.ts';

/** FNV-1a over UTF-16 units, 32 bits: what a feature is known by. */
export function hash(text: string): number {
  let h = 0x811c9dc5;
  for (let at = 0; at < text.length; at++) {
    h ^= text.charCodeAt(at);
    h = Math.imul(h, 0x01000193);
  }
  return h >>> 0;
}

/** Features of one group count together as one vector of length one, so that long messages weigh no more than short ones. */
export interface FeatureGroup {
  readonly ids: readonly number[];
  readonly weight: number;
}

const LETTERS = [2, 3, 4, 5] as const;
const WORDS_WEIGHT = 1;
const LETTERS_WEIGHT = 0.8;
const LAST_WEIGHT = 0.5;
const CLASSES_WEIGHT = 0.7;
const OF_TANKS_WEIGHT = 0.5;

/** What a message shows of what is wanted: words and groups of them, letters inside words, its last clause by itself. */
export function featuresOf(scanned: Scanned): readonly FeatureGroup[] {
  const masks = scanned.tokens.map(({ mask }) => mask);
  const words = new Set<number>();
  for (let n = 1; n <= 3; n++)
    for (let at = 0; at + n <= masks.length; at++) words.add(hash(`w ${masks.slice(at, at + n).join(' ')}`));
  masks.slice(0, 2).forEach((mask, at) => words.add(hash(`f${at} ${mask}`)));
  for (const { name } of scanned.tokens)
    if (name !== undefined) words.add(hash(`n ${name.class} ${name.id}`));
  const letters = new Set<number>();
  for (const { word, mask } of scanned.tokens) {
    if (mask.startsWith('#') || word.length < 3) continue;
    const framed = `^${word}$`;
    for (const n of LETTERS)
      for (let at = 0; at + n <= framed.length; at++) letters.add(hash(`l ${framed.slice(at, at + n)}`));
  }
  const last = new Set<number>();
  const clause = lastClause(scanned.tokens);
  for (let n = 1; n <= 2; n++)
    for (let at = 0; at + n <= clause.length; at++) last.add(hash(`e ${clause.slice(at, at + n).join(' ')}`));
  const classes = new Set<number>();
  const met = classesIn(scanned.tokens.map(({ word, mask }) => (mask.startsWith('#') ? mask : word)));
  const path: string[][] = [];
  met.forEach((names, at) => {
    const mask = masks[at] ?? '';
    const here = names.length > 0 ? [...names] : mask.startsWith('#') ? [mask] : [];
    if (here.length === 0) return;
    for (const name of here) {
      classes.add(hash(`x ${name}`));
      for (const before of path.at(-1) ?? []) classes.add(hash(`x ${before} ${name}`));
      for (const before of path.at(-2) ?? []) classes.add(hash(`x ${before} . ${name}`));
    }
    path.push(here);
  });
  return [
    { ids: ofTanks(scanned, path), weight: OF_TANKS_WEIGHT },
    { ids: [...classes], weight: CLASSES_WEIGHT },
    { ids: [...words], weight: WORDS_WEIGHT },
    { ids: [...letters], weight: LETTERS_WEIGHT },
    { ids: [...last], weight: LAST_WEIGHT },
  ];
}

/** Names and words that stand for what is in and around a reef tank. */
const TANK_WORD = /^(?:#coral|#salt|#parameter|(?:animals|corals|fish|gear|hardware|substances)\.)/;
/** Words that go into one step of a message's length, and the most steps. */
const WORDS_A_STEP = 6;
const MOST_STEPS = 6;

/**
 * How much of a message is of tanks, beside its length, its numbers and whether it asks: talk of the day has alarming words
 * and nothing of a tank. On six batches left out it lifts the first kind from 93.2 to 94.2 % and halves the false alarms.
 */
function ofTanks({ tokens, numbers }: Scanned, path: readonly (readonly string[])[]): readonly number[] {
  const count = path.filter((names) => names.some((name) => TANK_WORD.test(name))).length;
  const few = count > 3 ? 4 : Math.min(count, 2);
  const length = Math.min(MOST_STEPS, Math.floor(tokens.length / WORDS_A_STEP));
  const asks = tokens.some(({ mask }) => mask === '?');
  return [
    `t ${few}`,
    `tl ${few} ${length}`,
    `tn ${few} ${Math.min(numbers.length, 2)}`,
    `q ${asks} ${few}`,
  ].map(hash);
}

const MARKS = new Set(['?', '!', '.', ',', ';', ':']);
const MOST_LAST = 8;

/** The last words up to the mark before them: where a story ends in its question. */
function lastClause(tokens: readonly Token[]): readonly string[] {
  const masks = tokens.map(({ mask }) => mask);
  while (MARKS.has(masks.at(-1) ?? '')) masks.pop();
  return masks.slice(-MOST_LAST);
}
