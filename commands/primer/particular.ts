import { subjectCard } from '../../core/care/subjects/cards.ts';
import { cardsAsked, type WeighedCard } from '../../core/care/subjects/cards-asked.ts';
import { askedIn, type Asked } from '../../core/care/subjects/points-asked.ts';
import type { SubjectCard } from '../../core/care/subjects/subject-card.ts';
import type { Frame } from '../../core/language/frame.ts';
import { say } from '../../core/wording/say.ts';
import { answer, type Answer, type NextAction } from '../answer.ts';
import { askedAnswer, openSubject } from './subject-answer.ts';

/** From this probability among its kind's cards one is answered outright, below it some are offered; own choice. */
const CLEAR = 0.6;
/** From this probability one is offered, this many at most; own choices. */
const PERHAPS = 0.05;
const MOST_OFFERED = 4;
const MOST_BESIDE = 2;

/** The card for the particular question below a message's kind, where one is clear, turned towards what the message names. */
export function particularOf(frame: Frame): Answer | undefined {
  const [first, ...others] = cardsOf(frame);
  if (first?.card === undefined || first.probability < CLEAR) return undefined;
  const given = askedAnswer(first.card, askedOf(frame), likely(others).slice(0, MOST_BESIDE));
  return { ...given, read: [`as ${first.card.title}`, ...given.read] };
}

/** Whether a message is after one of its kind's cards, and which is not clear. */
export function isUnclear(frame: Frame): boolean {
  const [first] = cardsOf(frame);
  return first?.card !== undefined && first.probability < CLEAR;
}

/** Cards that a message may be after, where none is clear. */
export function perhapsOf(frame: Frame): readonly NextAction[] {
  return likely(cardsOf(frame)).map(openSubject);
}

/** Nothing but cards that may be meant. */
export function nearest(next: readonly NextAction[], dangers: readonly string[]): Answer {
  return answer({ headline: say('primer.whichNearest'), tone: 'question', dangers, next });
}

/** The cards of the kind, likeliest first, weighed by the coral that is named. */
function cardsOf(frame: Frame): readonly WeighedCard[] {
  const cards = frame.cards.map(({ name, probability }) => ({
    card: subjectCard(frame.kind, name),
    probability,
  }));
  return cards.length === 0 ? cards : cardsAsked(cards, askedOf(frame).animals);
}

function askedOf({ reading, slots: { corals = [], volume } }: Frame): Asked {
  return askedIn(reading.scanned.text, corals, volume);
}

function likely(cards: readonly WeighedCard[]): readonly SubjectCard[] {
  return cards
    .filter(({ probability }) => probability >= PERHAPS)
    .flatMap(({ card }) => card ?? [])
    .slice(0, MOST_OFFERED);
}
