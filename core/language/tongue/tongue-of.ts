import { findParameter } from '../../water/parameter.ts';
import { classesOfWord } from '../lexicon/classes.ts';
import { runsOf, wordsOf } from './letters.ts';
import { STEP, unpack, type Packed, type Runs } from './packed.ts';
import { profiles } from './profiles.ts';
import { tongues, type Tongue, type Unread } from './tongues.ts';

/** What language a message is in, and how sure that is (0.5 to 1; a scale of its own, no frequency). */
export interface Heard {
  readonly tongue: Tongue | Unread;
  readonly sureness: number;
}

/** So much of a message is looked at. */
const MOST_CHARACTERS = 4000;
/** Nats a single word can say for or against English at most, so that one strange word in English changes nothing. */
const MOST_A_WORD = 6;
/** Nats by which another language must be likelier than English: more than one word can say. */
const LEAST_MARGIN = 8;
/** Nats that take the sureness from 0.5 to 0.73. */
const SURENESS_NATS = 2;

const OTHER_LETTER = /(?!\p{Script=Latin}|\p{Script=Common}|\p{Script=Inherited})\p{L}/gu;
const LATIN_LETTER = /\p{Script=Latin}/gu;
const LEAST_OTHER_LETTERS = 4;

/** The recogniser of these letter models. */
export function openTongues(packed: Packed): (text: string) => Heard {
  const runs = unpack(packed);
  return (text) => heardIn(runs, text.slice(0, MOST_CHARACTERS));
}

let recognise: ReturnType<typeof openTongues> | undefined;

/**
 * The language of a message. English unless another is clearly likelier: numbers, names of what is measured, words of
 * the hobby, misspelt English and English with a few words of another language are English.
 */
export function tongueOf(text: string): Heard {
  recognise ??= openTongues(profiles);
  return recognise(text);
}

function heardIn(runs: Runs, text: string): Heard {
  if (isOtherScript(text)) return { tongue: 'other', sureness: 1 };
  const likelier = tongues.map(() => 0);
  const margins = tongues.map(() => 0);
  for (const word of wordsOf(text)) {
    const most = isKnown(word) ? 0 : MOST_A_WORD;
    for (const [tongue, nats] of likelierThanEnglish(runs, word).entries()) {
      likelier[tongue] = (likelier[tongue] ?? 0) + nats;
      margins[tongue] = (margins[tongue] ?? 0) + Math.max(-MOST_A_WORD, Math.min(most, nats));
    }
  }
  const best = likelier.indexOf(Math.max(...likelier.slice(1)), 1);
  const beyond = ((margins[best] ?? 0) - LEAST_MARGIN) / SURENESS_NATS;
  return {
    tongue: beyond > 0 ? (tongues[best] ?? 'english') : 'english',
    sureness: 1 / (1 + Math.exp(-Math.abs(beyond))),
  };
}

/**
 * A word of the vocabulary here, or what is measured ("kh", "mag"), says nothing for another language, though some are
 * words of both ("die", "was").
 */
function isKnown(word: string): boolean {
  return findParameter(word) !== undefined || classesOfWord(word.replaceAll('’', "'")).length > 0;
}

/** Nats by which a word is likelier in each language than in English. */
function likelierThanEnglish(runs: Runs, word: string): readonly number[] {
  const nats = tongues.map(() => 0);
  for (const longest of runsOf(word)) {
    const steps = known(runs, longest);
    if (steps === undefined) continue;
    const english = steps[0] ?? 0;
    for (const [tongue, own] of steps.entries()) nats[tongue] = (nats[tongue] ?? 0) + (english - own) * STEP;
  }
  return nats;
}

/** The longest end of a run that was kept. */
function known(runs: Runs, longest: string): readonly number[] | undefined {
  for (let from = 0; from < longest.length; from++) {
    const steps = runs.get(longest.slice(from));
    if (steps !== undefined) return steps;
  }
  return undefined;
}

function isOtherScript(text: string): boolean {
  const others = text.match(OTHER_LETTER)?.length ?? 0;
  if (others < LEAST_OTHER_LETTERS) return false;
  return others >= (text.match(LATIN_LETTER)?.length ?? 0) / 2;
}
