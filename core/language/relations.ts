/** Small words and marks that tie one quantity of a rule to another. They are grammar: nothing is learnt of them. */
const relations = {
  /** The quantity behind it is what the other is counted for. */
  per: 'per each every / for in into to of',
  /** Both sides are said to be the same. */
  is: 'is are = equals equal means makes make gives reads weighs weigh replaces as',
  /** What a dose does to a level. */
  raises:
    'raises raise raised lifts lift lifted gives gave ups bumps bumped moves move shifts shift is = equals',
  /** A rate: what is behind it is how often. */
  rate: 'in per each every a / within',
  by: 'by',
  with: 'with using',
  times: 'x * times multiply multiplied',
  over: '/ divided divide over',
  ratio: ': to',
} as const;

export type Relation = keyof typeof relations;

const words: ReadonlyMap<Relation, ReadonlySet<string>> = new Map(
  Object.entries(relations).map(([name, list]) => [name as Relation, new Set(list.split(' '))]),
);

export function relates(word: string | undefined, relation: Relation): boolean {
  return word !== undefined && (words.get(relation)?.has(word) ?? false);
}
