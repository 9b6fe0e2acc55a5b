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
