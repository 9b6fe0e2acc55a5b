import { corals } from '../corals/coral-list.ts';
import { editDistance } from '../edit-distance.ts';
import { classesOfWord } from './lexicon/classes.ts';

/** Shorter words are too near to ordinary ones. Own choice. */
const SHORTEST = 6;
/** From this length on two letters may be wrong, below it one. Own choice. */
const LONG = 9;

/** Names no ordinary word is near to: every genus of the guide, and these. */
const distinct: readonly string[] = [
  ...new Set([
    ...corals.flatMap(({ scientific }) => scientific.genera.map((genus) => genus.toLowerCase())),
    'torch',
    'duncan',
    'frogspawn',
    'toadstool',
    'elegance',
    'zoanthids',
  ]),
];

/** Whether a word no list knows is a telling name of a coral with a slip in it: "goneopora". Which, `findCorals` says. */
export function isNearCoral(word: string): boolean {
  if (word.length < SHORTEST || classesOfWord(word).length > 0) return false;
  return distinct.some((name) => {
    const most = Math.min(word.length, name.length) < LONG ? 1 : 2;
    return Math.abs(word.length - name.length) <= most && editDistance(word, name) <= most;
  });
}
