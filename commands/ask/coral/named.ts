import { corals } from '../../../core/corals/coral-list.ts';
import { findCorals } from '../../../core/corals/find.ts';
import type { NamedCoral } from '../../../core/corals/named.ts';
import { coralsIn } from '../../../core/words/corals.ts';
import type { Heard } from '../../../core/words/hear.ts';
import { says } from '../intent.ts';

const TROUBLE = [
  'bleach(?:ed|es|ing)?',
  'dying',
  'died',
  'dead',
  'dies',
  'closed',
  'shut',
  'reced(?:e|es|ed|ing)',
  'melt(?:s|ed|ing)?',
  'turn(?:ed|ing) (?:white|brown|pale)',
  'jelly',
  'slime',
  'sick',
  'wont open',
  "won't open",
  'peeling',
  'pests?',
  'infect(?:ed|ion)',
  'waxy',
  'wrong with',
  'shrink(?:s|ing)?',
  'shrunk(?:en)?',
  'unhappy',
  'stressed',
] as const;

/** Something looks wrong: no question for the guide. */
export function isTrouble(heard: Heard): boolean {
  return says(heard, ...TROUBLE);
}

/** The one coral a question of the guide is about; undefined with none, several, trouble or a parameter named. */
export function oneCoral(heard: Heard): NamedCoral | undefined {
  if (heard.said.length > 0 || heard.parameters.length > 0 || isTrouble(heard)) return undefined;
  const [named, other] = coralsIn(heard.text);
  return other === undefined ? (named ?? respelt(heard)) : undefined;
}

/** Shorter words are too near to ordinary ones. */
const SHORTEST = 6;
/** Only in a short question, and so many of its words: each look-up takes some milliseconds. */
const LONGEST_QUESTION = 120;
const MOST_WORDS = 6;
/** Names no ordinary word is near to: every genus, and these. */
const DISTINCT: ReadonlySet<string> = new Set(
  corals
    .flatMap(({ scientific }) => scientific.genera.map((genus) => genus.toLowerCase()))
    .concat('torch', 'duncan', 'frogspawn', 'toadstool', 'elegance', 'zoanthids'),
);

/** A misspelt name in a short question that names no coral as it is written: "goneopora". */
export function respelt(heard: Heard): NamedCoral | undefined {
  if (!known.has(heard)) known.set(heard, lookedUp(heard));
  return known.get(heard);
}

/** Several intents ask of one question. */
const known = new WeakMap<Heard, NamedCoral | undefined>();

function lookedUp({ text }: Heard): NamedCoral | undefined {
  if (text.length > LONGEST_QUESTION) return undefined;
  const words = (text.match(/[a-z]+/g) ?? []).filter(({ length }) => length >= SHORTEST);
  for (const name of words.slice(0, MOST_WORDS)) {
    const found = findCorals(name);
    if (found.kind === 'none' || found.kind === 'no page' || !isDistinct(found.readAs)) continue;
    const [first, ...more] = found.kind === 'one' ? [found.entry] : found.entries;
    if (first !== undefined) return { name, entries: [first, ...more] };
  }
  return undefined;
}

function isDistinct(readAs: string | undefined): boolean {
  return readAs !== undefined && DISTINCT.has(readAs.toLowerCase().replace(/ corals?$/, ''));
}
