import { nameWords } from '../../corals/name-words.ts';
import { subjectCards } from './cards.ts';
import { namedIn, sharedAnimals, type Named } from './named-in.ts';
import { nearness, spansIn, type Span } from './near-number.ts';
import type { SubjectCard } from './subject-card.ts';

type Point = SubjectCard['points'][number];

/** What a message names, ready to be compared with the points of a card. */
export interface Asked {
  readonly animals: Named;
  readonly words: ReadonlySet<string>;
  readonly spans: readonly Span[];
}

/** Own choices: what a shared animal, number and telling word count, a label for double. */
const ANIMAL = 4;
const NUMBER = 3;
const LABEL = 2;
/** Below this a point is not about what the message names; one telling word in a label passes. */
const ABOUT = 2;
/** Words of questions that seldom stand in points and yet tell nothing. */
const EMPTY = new Set(
  `the and for with from that this then than what when which who how why can could should would will does did has have had are
  was were its mine your you they them there here just also any all more most very much many some one two put get got keep
  kept safe good bad best okay fine need want help stop still not nah yes now new old big small tank reef water coral fish day
  week month time my im ive dont doesnt isnt about into onto over after before or if so be do is it in on at to of no`.split(
    /\s+/,
  ),
);

/** `volume` is that of the tank, where it is known; other volumes of the text then count no more. */
export function askedIn(text: string, corals: readonly string[], volume?: string): Asked {
  const tank = spansIn(volume ?? '');
  const spans = spansIn(text).filter(({ kind }) => tank.length === 0 || kind !== 'volume');
  return { animals: namedIn(text, corals), words: new Set(wordsOf(text)), spans: [...tank, ...spans] };
}

/**
 * The points of a card, those first that speak of what the message names; all others stay as they stand. A fish or a shrimp
 * that the title names tells no point from another. Deterministic; nothing moves where nothing matches.
 */
export function pointsAsked({ title, points }: SubjectCard, asked: Asked): readonly Point[] {
  const inTitle = namedIn(title);
  const animals = new Set([...asked.animals].filter((key) => key.includes(' ') || !inTitle.has(key)));
  const score = new Map(points.map((point) => [point, scoreOf(point, { ...asked, animals })]));
  const worth = (point: Point): number => {
    const own = score.get(point) ?? 0;
    return own < ABOUT ? 0 : own;
  };
  return points.toSorted((a, b) => worth(b) - worth(a));
}

/** The one point whose label names all animals the message names, where neither headline nor title speaks of them. */
export function pointInstead(
  { title, headline, points }: SubjectCard,
  { animals }: Asked,
): Point | undefined {
  if (sharedAnimals(animals, namedIn(`${title}; ${headline}`)) >= 1) return undefined;
  const shared = points.map((point) => sharedAnimals(animals, namedIn(point[0])));
  const most = Math.max(...shared, 0);
  const found = points[shared.indexOf(most)];
  const isOne = most >= 1 && shared.filter((each) => each === most).length === 1;
  return isOne && found !== undefined && isOfAll(animals, namedIn(found[0])) ? found : undefined;
}

/** Whether a text names every animal that is asked about, of corals one of each group. */
function isOfAll(animals: Asked['animals'], told: Asked['animals']): boolean {
  return [...animals].every((key) => {
    if (/^(?:coral|group) /.test(key)) return true;
    return told.has(key) || told.has(key.replace(/^of /, 'group '));
  });
}

function scoreOf([label, value]: Point, { animals, words, spans }: Asked): number {
  const inLabel = wordsOf(label);
  const inValue = wordsOf(value).filter((word) => !inLabel.includes(word));
  const weigh = (told: readonly string[]): number =>
    told.filter((word) => words.has(word)).reduce((sum, word) => sum + tellingOf(word), 0);
  return (
    ANIMAL * (LABEL * sharedAnimals(animals, namedIn(label)) + sharedAnimals(animals, namedIn(value))) +
    LABEL * weigh(inLabel) +
    weigh(inValue) +
    LABEL * NUMBER * nearness(spans, spansIn(label))
  );
}

/** 2 for a word in one point only, less down to 0 the more hold it (inverse frequency); 0 for one in none. */
function tellingOf(word: string): number {
  const { counts, points } = countedWords();
  const count = counts.get(word);
  return count === undefined ? 0 : 2 * (1 - Math.log(count) / Math.log(points));
}

function wordsOf(text: string): readonly string[] {
  return [
    ...new Set(nameWords(text).filter((word) => word.length > 2 && !EMPTY.has(word) && !/\d/.test(word))),
  ];
}

let counted: { readonly counts: ReadonlyMap<string, number>; readonly points: number } | undefined;

/** How many points of all cards hold each word. */
function countedWords(): NonNullable<typeof counted> {
  if (counted !== undefined) return counted;
  const all = [...subjectCards.values()].flat().flatMap(({ points }) => points);
  const counts = new Map<string, number>();
  for (const point of all)
    for (const word of wordsOf(point.join(' '))) counts.set(word, (counts.get(word) ?? 0) + 1);
  counted = { counts, points: all.length };
  return counted;
}
