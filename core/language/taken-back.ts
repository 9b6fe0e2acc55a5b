import { hasBox } from './box-said.ts';
import type { Said } from './said.ts';
import { placeOf, type Scanned } from './tokens.ts';

/** Words before a number that take it back: "30 gal, not 50", "forget the 1180". They are grammar: nothing is learnt of them. */
const BACK = new Set(['not', "isn't", 'isnt', 'forget', 'ignore', 'scrap', 'never']);
/** Words that may stand between. */
const BETWEEN = new Set(['the', 'that', 'a', 'an', 'it', 'my', 'about', 'really', 'was', 'at', 'on']);
const MOST_BETWEEN = 2;
/** Words before the water of a tank that is no more: "the old 200 l". A level that was is told, and stays. */
const BYGONE = new Set(['old', 'previous', 'former']);

/**
 * The numbers of a message without those it takes back, where another number of the same part stands beside them: of "its
 * 30 gal not 50" the 30 is left. A number that is alone stays: "not 8" says something of eight.
 */
export function withoutTakenBack({ tokens }: Scanned, said: readonly Said[]): readonly Said[] {
  return said.filter((one) => {
    const at = placeOf(tokens, one.number);
    const isWater = one.part === 'system' && one.number.kinds.includes('volume');
    if (!isBack(tokens, at, isWater)) return true;
    const others = said.filter((other) => other !== one);
    return !others.some((other) => isSameThing(one, other)) && !(isWater && hasBox(others));
  });
}

/** Whether the word or number at a place is taken back by the words before it; `isWater`: it is the water of a tank. */
export function isBack(tokens: Scanned['tokens'], at: number, isWater = false): boolean {
  for (let n = at - 1; n >= 0 && n >= at - 1 - MOST_BETWEEN; n--) {
    const word = tokens[n]?.word.toLowerCase() ?? '';
    if (BACK.has(word) || (isWater && BYGONE.has(word))) return true;
    if (!BETWEEN.has(word)) return false;
  }
  return false;
}

/** The names a message takes back: "it is not an acan, so plate i think". */
export function namesBack(tokens: Scanned['tokens']): ReadonlySet<string> {
  return new Set(
    tokens.flatMap(({ name }, at) => (name !== undefined && isBack(tokens, at) ? [name.id] : [])),
  );
}

/** Whether a message takes a number of its own back. */
export function takesBack(scanned: Scanned, said: readonly Said[]): boolean {
  return withoutTakenBack(scanned, said).length < said.length;
}

/** Of the same part, or one of them of none that is known. */
function isSameThing(one: Said, other: Said): boolean {
  const bare = one.number.kinds.length === 0 || other.number.kinds.length === 0;
  const isSameKind = bare || one.number.kinds.some((kind) => other.number.kinds.includes(kind));
  return isSameKind && (one.part === other.part || one.part === 'none' || one.part === 'was');
}
