import type { Answer, Fact } from '../answer.ts';

/** Facts of a card beside a sum: those that are examples of the sum with other numbers are left out. */
export function otherFacts({ facts }: Answer): readonly Fact[] {
  return facts.filter(({ label }) => !/\d/.test(label) && label !== 'If it sticks');
}
