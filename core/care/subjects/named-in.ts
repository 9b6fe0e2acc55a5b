import { namedCoral } from '../../corals/named.ts';
import { nameWords } from '../../corals/name-words.ts';
import { classesIn } from '../../language/lexicon/classes.ts';
import { coralWordsAmongCorals } from '../../language/lexicon/everyday-coral-words.ts';
import { scan } from '../../language/tokens.ts';

/**
 * Animals that a text names, as keys that can be compared: `coral torch-coral`, `fish.clown`; `group soft` for a whole
 * group by its name, `of soft` for the group of a coral that is named.
 */
export type Named = ReadonlySet<string>;

/** Classes beside fish that name no kind of them. */
export const NO_KIND_OF_FISH = [
  'fish.anyFish',
  'fish.fry',
  'fish.fishOnly',
  'fish.parasite',
  'fish.fishDisease',
] as const;

/** Classes that name no animal in particular. */
const VAGUE: ReadonlySet<string> = new Set([...NO_KIND_OF_FISH, 'animals.pest', 'animals.bloom']);

/** Groups so narrow that all in them are treated alike. */
const NARROW: ReadonlySet<string> = new Set(['anemone', 'mushroom', 'zoanthid']);

/** What a whole group of corals is called. */
const GROUPS: readonly (readonly [group: string, words: RegExp])[] = [
  ['soft', /\bsoft(?:ies?| corals?)\b/],
  ['small-polyp', /\b(?:sps|small.polyp|sticks)\b/],
  ['large-polyp', /\b(?:lps|large.polyp|fleshy)\b/],
  ['zoanthid', /\bzoanthids?\b/],
];

/** The animals a short text names; `corals` are names found in it already. */
export function namedIn(text: string, corals: readonly string[] = coralNamesIn(text)): Named {
  const folded = text.toLowerCase();
  const classes = [nameWords(folded), folded.split(/[^\p{L}']+/u)].flatMap((words) =>
    classesIn(words).flat(),
  );
  return new Set([
    ...corals.flatMap(keysOf),
    ...GROUPS.flatMap(([group, words]) => (words.test(folded) ? groupKeys('group', group) : [])),
    ...classes.filter((name) => /^(?:fish|animals)\./.test(name) && !VAGUE.has(name)),
  ]);
}

/** A name that fits several groups ("mushroom coral") stands for the likeliest. */
function keysOf(name: string): readonly string[] {
  const entries = namedCoral(name)?.entries ?? [];
  const group = entries[0]?.group;
  if (group === undefined) return [];
  const own = entries.filter((entry) => entry.group === group).map(({ id }) => `coral ${id}`);
  return [...own, ...groupKeys('of', group)];
}

function groupKeys(as: 'of' | 'group', group: string): readonly string[] {
  return NARROW.has(group) ? [`${as} ${group}`, `coral of ${group}`] : [`${as} ${group}`];
}

function coralNamesIn(text: string): readonly string[] {
  const { names, tokens } = scan(text);
  const everyday = tokens.filter(({ word }) => coralWordsAmongCorals.has(word.replace(/s$/, '')));
  return [
    ...names.filter((name) => name.class === 'coral').map(({ id }) => id),
    ...everyday.map(({ word }) => word),
  ];
}

/** How much of what is asked about another text names: an animal counts whole, the name of its group a little. */
export function sharedAnimals(asked: Named, told: Named): number {
  const shared = [...asked].filter((key) => told.has(key));
  const animals = shared.filter((key) => !/^(?:coral|group|of) /.test(key)).length;
  if (shared.some((key) => key.startsWith('coral '))) return animals + 1;
  const isGroup = [...asked].some((key) => {
    const [as, group = ''] = key.split(' ');
    return (
      (as === 'of' || as === 'group') &&
      (told.has(`group ${group}`) || (as === 'group' && told.has(`of ${group}`)))
    );
  });
  return animals + (isGroup ? GROUP : 0);
}

/** "Soft corals" tells something of a toadstool, less than a line of its own. Own choice. */
const GROUP = 0.4;
