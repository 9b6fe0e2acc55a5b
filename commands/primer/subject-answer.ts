import { pointInstead, pointsAsked, type Asked } from '../../core/care/subjects/points-asked.ts';
import type { SubjectCard } from '../../core/care/subjects/subject-card.ts';
import { answer, type Answer, type NextAction } from '../answer.ts';
import { action } from '../calls.ts';

/** A button that opens the card of a particular question. */
export function openSubject({ title }: SubjectCard): NextAction {
  return action(title, 'primer', { about: title });
}

/** The card of a particular question, with the likeliest others as buttons. */
export function subjectAnswer(
  { headline, steps, points, cautions, sources }: SubjectCard,
  others: readonly SubjectCard[] = [],
): Answer {
  return answer({
    headline,
    facts: points.map(([label, value]) => ({ label, value })),
    steps,
    cautions,
    sources,
    next: others.map(openSubject),
  });
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
