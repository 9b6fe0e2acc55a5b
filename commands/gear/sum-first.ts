import type { Answer, Fact } from '../answer.ts';
import { MOST_POINTS } from '../primer/subject-answer.ts';

/** A card with a sum for what was said first; its own facts that are examples of that sum with other numbers are left out. */
export function sumFirst(card: Answer, headline: string, facts: readonly Fact[]): Answer {
  const others = card.facts.filter(({ label }) => !/\d/.test(label) && label !== 'If it sticks');
  return { ...card, headline, facts: [...facts, ...others].slice(0, MOST_POINTS) };
}
