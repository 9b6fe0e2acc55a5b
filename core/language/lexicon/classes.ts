import { animals } from './animals.ts';
import { body } from './body.ts';
import { corals } from './corals.ts';
import { deeds } from './deeds.ts';
import { despair } from './despair.ts';
import { events } from './events.ts';
import { fish } from './fish.ts';
import { gear } from './gear.ts';
import { hardware } from './hardware.ts';
import { lives } from './lives.ts';
import { isMedicineName } from './medicine-stems.ts';
import { looks } from './looks.ts';
import { manner } from './manner.ts';
import { places } from './places.ts';
import { poisons } from './poisons.ts';
import { records } from './records.ts';
import { substances } from './substances.ts';
import { sums } from './sums.ts';
import { times } from './times.ts';
import { parts } from './parts-of-speech.ts';

/** Every domain of the vocabulary: what one word of a class was learnt of holds for the others. */
const domains = {
  animals,
  body,
  corals,
  deeds,
  despair,
  events,
  fish,
  gear,
  hardware,
  lives,
  looks,
  manner,
  parts,
  places,
  poisons,
  records,
  substances,
  sums,
  times,
} as const satisfies Record<string, Readonly<Record<string, string>>>;

type Domains = typeof domains;

/** `domain.class`, as `met` is asked for it. */
export type ClassName = {
  readonly [Domain in keyof Domains]: `${Domain}.${keyof Domains[Domain] & string}`;
}[keyof Domains];

/** Words of the longest expression. */
const LONGEST = 5;

/** Classes by word or expression, the words of an expression joined by a blank; `domain.class`. */
const classesOf: ReadonlyMap<string, readonly string[]> = buildClasses();

function buildClasses(): ReadonlyMap<string, readonly string[]> {
  const map = new Map<string, string[]>();
  for (const [domain, classes] of Object.entries(domains))
    for (const [name, words] of Object.entries(classes))
      for (const word of new Set(words.split(/\s+/).filter((each) => each !== ''))) {
        const text = word.replaceAll('_', ' ');
        map.set(text, [...(map.get(text) ?? []), `${domain}.${name}`]);
      }
  return map;
}

/** First words of expressions, so that most words are looked up once. */
const openers: ReadonlySet<string> = new Set(
  [...classesOf.keys()].flatMap((text) => (text.includes(' ') ? [text.split(' ')[0] ?? ''] : [])),
);

/** The classes of one word; expressions stand in the lexicon without apostrophes. */
export function classesOfWord(word: string): readonly string[] {
  const listed = classesOf.get(word) ?? classesOf.get(word.replaceAll("'", ''));
  if (listed !== undefined) return listed;
  return isMedicineName(word) ? MEDICINE : [];
}

/** What a generic name of a medicine is taken for, whichever it is. */
const MEDICINE = ['poisons.antibiotic'] as const;

/** The classes met from word to word, those of the longest expression at each place. */
export function classesIn(words: readonly string[]): readonly (readonly string[])[] {
  const found: (readonly string[])[] = [];
  for (let at = 0; at < words.length; at++) {
    const word = words[at] ?? '';
    const length = openers.has(word.replaceAll("'", '')) ? longestAt(words, at) : 1;
    const text = length === 1 ? word : words.slice(at, at + length).join(' ');
    found.push(classesOfWord(text));
    for (let skipped = 1; skipped < length; skipped++) found.push([]);
    at += length - 1;
  }
  return found;
}

function longestAt(words: readonly string[], at: number): number {
  for (let length = Math.min(LONGEST, words.length - at); length > 1; length--)
    if (classesOfWord(words.slice(at, at + length).join(' ')).length > 0) return length;
  return 1;
}
