import { namedCoral } from '../../corals/named.ts';
import { nameWords } from '../../corals/name-words.ts';
import { classesIn } from '../../language/lexicon/classes.ts';
import { coralWordsAmongCorals } from '../../language/lexicon/everyday-coral-words.ts';
import { scan } from '../../language/tokens.ts';

/** Animals that a text names, as keys that can be compared: `coral torch-coral`, `group soft`, `fish.clown`. */
export type Named = ReadonlySet<string>;

/** Classes that name no animal in particular. */
const VAGUE: ReadonlySet<string> = new Set([
  'fish.anyFish',
  'fish.fry',
  'fish.fishOnly',
  'fish.parasite',
  'fish.fishDisease',
  'animals.pest',
  'animals.bloom',
]);

/** What a whole group of corals is called. */
const GROUPS: readonly (readonly [group: string, words: RegExp])[] = [
  ['soft', /\bsoft(?:ies?| corals?)\b/],
  ['small-polyp', /\b(?:sps|small.polyp|sticks?)\b/],
  ['large-polyp', /\b(?:lps|large.polyp|fleshy|brains?)\b/],
  ['zoanthid', /\bzoanthids?\b/],
];

/** The animals a short text names; `corals` are names found in it already. */
export function namedIn(text: string, corals: readonly string[] = coralNamesIn(text)): Named {
  const folded = text.toLowerCase();
  const entries = corals.flatMap((name) => namedCoral(name)?.entries ?? []);
  const classes = classesIn(nameWords(folded).concat(folded.split(/[^\p{L}']+/u))).flat();
  return new Set([
    ...entries.flatMap(({ id, group }) => [`coral ${id}`, `group ${group}`]),
    ...GROUPS.flatMap(([group, words]) => (words.test(folded) ? [`group ${group}`] : [])),
    ...classes.filter((name) => /^(?:fish|animals)\./.test(name) && !VAGUE.has(name)),
  ]);
}

function coralNamesIn(text: string): readonly string[] {
  const { names, tokens } = scan(text);
  const everyday = tokens.filter(({ word }) => coralWordsAmongCorals.has(word.replace(/s$/, '')));
  return [
    ...names.filter((name) => name.class === 'coral').map(({ id }) => id),
    ...everyday.map(({ word }) => word),
  ];
}

/** How much of what is asked about another text names: an animal counts whole, its group only a little. */
export function sharedAnimals(asked: Named, told: Named): number {
  const shared = [...asked].filter((key) => told.has(key));
  const isCoral = shared.some((key) => key.startsWith('coral '));
  const groups = shared.filter((key) => key.startsWith('group ')).length;
  const animals = shared.filter((key) => !/^(?:coral|group) /.test(key)).length;
  return (isCoral ? 1 : 0) + animals + (!isCoral && groups > 0 ? GROUP : 0);
}

/** "Soft corals" tells something of a toadstool, less than a line of its own. Own choice. */
const GROUP = 0.4;
