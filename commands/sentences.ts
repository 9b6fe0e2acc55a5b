import type { Answer, Fact } from './answer.ts';

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

/** An answer with each of its texts rewritten, labels, verdicts, tables and what is said of pictures too; not its buttons. */
export function withTexts<Given extends Answer>(given: Given, rewrite: (text: string) => string): Given {
  const lines = (each: readonly string[]): readonly string[] => each.map(rewrite);
  const named = (fact: Fact): Fact => ({
    ...fact,
    label: rewrite(fact.label),
    ...(fact.verdict === undefined ? {} : { verdict: rewrite(fact.verdict) }),
  });
  const { facts, table, pictures } = given;
  return {
    ...withSentences({ ...given, facts: facts.map(named) }, rewrite),
    ...(table === undefined ? {} : { table: { head: lines(table.head), rows: table.rows.map(lines) } }),
    ...(pictures === undefined
      ? {}
      : { pictures: pictures.map((one) => ({ ...one, alt: rewrite(one.alt) })) }),
  };
}
