import { classesIn } from './lexicon/classes.ts';
import type { NameSpan } from './names.ts';
import { sentenceEnds, type Scanned, type Token } from './tokens.ts';

/** Classes of words behind which what is named is there already, and behind which it is wished for. */
const STANDS = ['manner.ownThing', 'records.came', 'records.moved', 'deeds.adds'] as const;
const WISHED = [
  'manner.wish',
  'manner.planning',
  'manner.supposition',
  'manner.may',
  'manner.askOk',
  'manner.askWhich',
  'deeds.buys',
] as const;
/** The same as plain words of grammar: nothing is learnt of them. */
const STANDS_WORDS: ReadonlySet<string> = new Set([
  'already',
  'got',
  'have',
  'hosts',
  'keep',
  'existing',
  'current',
]);
const WISHED_WORDS: ReadonlySet<string> = new Set([
  'add',
  'fit',
  'room',
  'space',
  'can',
  'does',
  'is',
  'which',
]);
/** Spots of a tank. */
const IN_TANK: ReadonlySet<string> = new Set(
  `sand sandBed rock top middle bottom backGlass corner overflow rack leftSide rightSide frontSide backSide rim under above`
    .split(' ')
    .map((name) => `places.${name}`),
);

/**
 * The corals of a message that stand in the tank already: behind "I have", "my", "already", or told with their place in a
 * sentence that neither asks nor wishes ("leather dead centre, star polyps on their own island"). Those that are wished
 * for or planned are none.
 */
export function standThere(scanned: Scanned): readonly NameSpan[] {
  return sentencesOf(scanned.tokens).flatMap((tokens) => {
    const classes = classesIn(tokens.map(({ word }) => word));
    const isPlaced = classes.flat().some((name) => IN_TANK.has(name));
    const isAsked = tokens.at(-1)?.word === '?';
    const already = tokens.findIndex(({ word }) => word === 'already');
    // "mushrooms and a frogspawn in already": all before it, back to the last comma.
    const from = already < 0 ? 0 : tokens.slice(0, already).findLastIndex(({ word }) => word === ',') + 1;
    let stands = isPlaced && !isAsked;
    return tokens.flatMap(({ word, name }, at) => {
      const of = (names: readonly string[]): boolean =>
        classes[at]?.some((one) => names.includes(one)) === true;
      if (name === undefined) {
        const isTanks = word === 'has' && classes.slice(0, at).flat().includes('places.tank');
        if (of(STANDS) || STANDS_WORDS.has(word) || isTanks) stands = true;
        else if (of(WISHED) || WISHED_WORDS.has(word)) stands = false;
      }
      const isBefore = at >= from && at < already;
      return (stands || isBefore) && name?.class === 'coral' ? [name] : [];
    });
  });
}

function sentencesOf(tokens: readonly Token[]): readonly (readonly Token[])[] {
  const ends = tokens.flatMap(({ word }, at) => (sentenceEnds.has(word) ? [at + 1] : []));
  return [...ends, tokens.length].map((end, at) => tokens.slice(ends[at - 1] ?? 0, end));
}
