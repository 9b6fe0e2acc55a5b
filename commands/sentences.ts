import type { Answer } from './answer.ts';

/** An answer with each of its sentences rewritten; labels, buttons, tables and pictures stay. */
export function withSentences<Given extends Answer>(given: Given, rewrite: (text: string) => string): Given {
  const lines = (each: readonly string[]): readonly string[] => each.map(rewrite);
  const { notices } = given;
  return {
    ...given,
    headline: rewrite(given.headline),
    ...(notices === undefined ? {} : { notices: lines(notices) }),
    read: lines(given.read),
    unused: lines(given.unused),
    facts: given.facts.map((fact) => ({ ...fact, value: rewrite(fact.value) })),
    steps: lines(given.steps),
    working: lines(given.working),
    dangers: lines(given.dangers),
    cautions: lines(given.cautions),
  };
}
