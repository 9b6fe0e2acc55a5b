import { pointInstead, pointsAsked, type Asked } from '../../core/care/subjects/points-asked.ts';
import type { SubjectCard } from '../../core/care/subjects/subject-card.ts';
import { say } from '../../core/wording/say.ts';
import type { Answer, NextAction } from '../answer.ts';
import { action } from '../calls.ts';
import { ofParts } from './of-parts.ts';

/** Facts shown at once: an answer fits a phone. */
export const MOST_POINTS = 3;

/** A button that opens the card of a particular question. */
export function openSubject({ title }: SubjectCard): NextAction {
  return action(title, 'primer', { about: title });
}

/** The card of a particular question with its first facts; the others are a button away. */
export function subjectAnswer(card: SubjectCard, others: readonly SubjectCard[] = []): Answer {
  const { title, points } = card;
  const more =
    points.length > MOST_POINTS
      ? [action(say('primer.moreOnThis'), 'primer', { about: title, all: 'yes' })]
      : [];
  return ofParts({ ...card, points: points.slice(0, MOST_POINTS) }, [...more, ...others.map(openSubject)]);
}

/** All facts of a card. */
export function wholeSubject(card: SubjectCard): Answer {
  return { ...ofParts(card, []), isList: true };
}

/** The same card turned towards what a message names: its points first, and the animal it asks about in the headline. */
export function askedAnswer(card: SubjectCard, asked: Asked, others: readonly SubjectCard[]): Answer {
  const points = pointsAsked(card, asked);
  const instead = pointInstead(card, asked);
  if (instead === undefined) return subjectAnswer({ ...card, points: [...points] }, others);
  const rest = points.filter((point) => point !== instead);
  return subjectAnswer(
    { ...card, headline: `${instead[0]}: ${instead[1]}`, points: [['In general', card.headline], ...rest] },
    others,
  );
}
