import { brokenLine } from '../../core/words/broken-line.ts';
import type { Fact } from '../answer.ts';
import { shortLimits } from '../short/limits.ts';

/** A fact of the short form holds so many characters, its label with it. */
export const FACT_LETTERS = 110;

/** The facts of the short form as lines that fit a phone; what is more to say of them follows, and then the others. */
export function shortFirst(facts: readonly Fact[], shown: number = shortLimits.facts): readonly Fact[] {
  const broken = facts.slice(0, shown).map(({ label, value }) => {
    const [first, more] = brokenLine(value, FACT_LETTERS - label.length - 2);
    return {
      first: { label, value: first },
      more: more === '' ? [] : [{ label: `more on ${label}`, value: more }],
    };
  });
  return [...broken.map(({ first }) => first), ...broken.flatMap(({ more }) => more), ...facts.slice(shown)];
}
