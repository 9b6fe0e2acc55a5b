import { subjectCards } from '../../core/care/subjects/cards.ts';
import type { SubjectCard } from '../../core/care/subjects/subject-card.ts';
import { Problem } from '../../core/problem.ts';
import { say } from '../../core/wording/say.ts';

const all = [...subjectCards.values()].flat();
const MOST_CHOICES = 5;

/**
 * The card of a particular question by its title, or by words of it.
 *
 * @throws Problem with the nearest titles where it is none.
 */
export function subjectTitled(about: string): SubjectCard {
  const asked = wordsOf(about);
  const exact = all.find(({ title }) => wordsOf(title).join(' ') === asked.join(' '));
  if (exact !== undefined) return exact;
  const near = all
    .map((card) => ({ card, shared: shared(asked, wordsOf(`${card.title} ${card.card} ${card.headline}`)) }))
    .filter(({ shared: count }) => count > 0)
    .toSorted((a, b) => b.shared - a.shared);
  const [first, second] = near;
  if (first !== undefined && first.shared === asked.length && first.shared > (second?.shared ?? 0))
    return first.card;
  throw new Problem(say('primer.noCard', { about }), {
    field: 'about',
    given: about,
    hint: say('primer.hintChooseCard'),
    choices: near.slice(0, MOST_CHOICES).map(({ card }) => card.title),
  });
}

function shared(asked: readonly string[], words: readonly string[]): number {
  return asked.filter((word) => words.includes(word)).length;
}

function wordsOf(text: string): readonly string[] {
  return text
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== '');
}
