import { classesOfWord } from './lexicon/classes.ts';
import type { Scanned } from './tokens.ts';

/** Words of salt and fresh water that go where they do not belong. Grammar: nothing is learnt of them. */
const ALONE = new Set(['ato', 'topoff', 'topup']);
const TOP = new Set(['top', 'tops', 'topped', 'topping']);
const SALT = new Set(['saltwater', 'salt', 'salted', 'brine']);
/** A tank of salt water is no salt water in the top-off. */
const TANK = new Set(['tank', 'tanks', 'aquarium', 'reef', 'setup', 'system', 'fish', 'goes', 'go', 'level']);
const VESSEL = new Set(['barrel', 'jug', 'bin', 'can', 'drum', 'bucket', 'container', 'bottle', 'jerrycan']);
const BY = new Set(['by', 'via', 'through', 'using']);

/** Where the top-off stands among the words: "ato", "top it up", "topping off"; -1 for nowhere. */
function topOffAt(words: readonly string[]): number {
  return words.findIndex((word, at) => {
    const behind = words.slice(at + 1, at + 3);
    return ALONE.has(word) || (TOP.has(word) && behind.some((next) => next === 'off' || next === 'up'));
  });
}

/** Salt water said as such, and neither denied nor the name of a tank. */
function isSaltAt(words: readonly string[], at: number): boolean {
  const isWater = words[at] === 'saltwater' || (SALT.has(words[at] ?? '') && words[at + 1] === 'water');
  const behind = words[at] === 'saltwater' ? words[at + 1] : words[at + 2];
  return (
    isWater && !TANK.has(behind ?? '') && !classesOfWord(words[at - 1] ?? '').includes('manner.negation')
  );
}

/** Salt water went where fresh water goes: "the top-up jug has saltwater in it", "topped off with salt by mistake". */
export function isSaltTopOff(scanned: Scanned): boolean {
  const words = wordsOf(scanned);
  const top = topOffAt(words);
  if (top < 0) return false;
  return words.some(
    (word, at) =>
      isSaltAt(words, at) ||
      (word === 'wrong' && VESSEL.has(words[at + 1] ?? '')) ||
      (word === 'salt' && (words[at - 1] === 'with' || words[at + 1] === 'instead')),
  );
}

/** Fresh water went in where the salt water of a change belongs: "ro instead of salt", "forgot the salt". */
export function isFreshForSalt(scanned: Scanned): boolean {
  const words = wordsOf(scanned);
  return (
    topOffAt(words) < 0 &&
    words.some((word, at) => {
      const [before, earlier] = [words[at - 1] ?? '', words[at - 2] ?? ''];
      const isInstead = before === 'of' && earlier === 'instead';
      const isForgotten =
        before === 'forgot' || (earlier === 'forgot' && (before === 'the' || before === 'to'));
      return SALT.has(word) && !TANK.has(words[at + 1] ?? '') && (isInstead || isForgotten);
    })
  );
}

/** Words before the top-off in which the way is said. Own choice. */
const NEAR = 4;

/** Salt water in the top-off is how it shall go up: "by way of the top-up jug", "topping off with salt". */
export function isByTopOff(scanned: Scanned): boolean {
  const words = wordsOf(scanned);
  const top = topOffAt(words);
  if (top < 0) return false;
  const behind = words.slice(top + 1, top + 5);
  const isWith = behind.some(
    (word, at) => (word === 'with' || word === 'w') && SALT.has(behind[at + 1] ?? ''),
  );
  return isWith || words.slice(Math.max(0, top - NEAR), top).some((word) => BY.has(word));
}

function wordsOf({ tokens }: Scanned): readonly string[] {
  return tokens.map(({ word }) => word).filter((word) => word !== '-');
}
