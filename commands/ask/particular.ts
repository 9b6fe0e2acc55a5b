import { subjectCard } from '../../core/care/subjects/cards.ts';
import type { SubjectCard } from '../../core/care/subjects/subject-card.ts';
import type { Frame } from '../../core/language/frame.ts';
import type { Kind } from '../../core/language/kinds.ts';
import { answer, type Answer, type NextAction } from '../answer.ts';
import { openSubject, subjectAnswer } from '../primer/subject-answer.ts';

/** From this probability among its kind's cards one is answered outright, below it some are offered; own choice. */
const CLEAR = 0.6;
/** From this probability one is offered, this many at most; own choices. */
const PERHAPS = 0.05;
const MOST_OFFERED = 4;
const MOST_BESIDE = 2;

/** The card for the particular question below a message's kind, where one is clear. */
export function particularOf({ kind, cards }: Frame): Answer | undefined {
  const [first, ...others] = cards;
  if (first === undefined || first.probability < CLEAR) return undefined;
  const card = subjectCard(kind, first.name);
  return card === undefined ? undefined : subjectAnswer(card, titled(kind, others).slice(0, MOST_BESIDE));
}

/** Whether a message is after one of its kind's cards, and which is not clear. */
export function isUnclear({ kind, cards: [first] }: Frame): boolean {
  return first !== undefined && first.probability < CLEAR && subjectCard(kind, first.name) !== undefined;
}

/** Cards that a message may be after, where none is clear. */
export function perhapsOf({ kind, cards }: Frame): readonly NextAction[] {
  return titled(kind, cards).map(openSubject);
}

/** Nothing but cards that may be meant. */
export function nearest(next: readonly NextAction[]): Answer {
  return answer({ headline: 'Which of these is it nearest to? Or say it in other words.', next });
}

function titled(kind: Kind, cards: Frame['cards']): readonly SubjectCard[] {
  return cards
    .filter(({ probability }) => probability >= PERHAPS)
    .flatMap(({ name }) => subjectCard(kind, name) ?? [])
    .slice(0, MOST_OFFERED);
}
