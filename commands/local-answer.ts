import { localText } from '../core/wording/local-text.ts';
import type { Answer, Fact, Picture } from './answer.ts';

/**
 * An answer with its numbers and days as this locale writes them. What is no sentence of ours stays as it is: the command
 * that asks the same, what buttons run, the names of tanks and files.
 */
export function localAnswer<Given extends Answer>(given: Given, locale: string | undefined): Given {
  if (locale === undefined) return given;
  const text = (line: string): string => localText(line, locale);
  const lines = (each: readonly string[]): readonly string[] => each.map(text);
  const fact = (each: Fact): Fact => ({
    ...each,
    label: text(each.label),
    value: text(each.value),
    ...(each.verdict === undefined ? {} : { verdict: text(each.verdict) }),
  });
  const { notices, table, picture } = given;
  return {
    ...given,
    headline: text(given.headline),
    ...(notices === undefined ? {} : { notices: lines(notices) }),
    read: lines(given.read),
    unused: lines(given.unused),
    facts: given.facts.map(fact),
    steps: lines(given.steps),
    working: lines(given.working),
    dangers: lines(given.dangers),
    cautions: lines(given.cautions),
    next: given.next.map((one) => ({ ...one, label: text(one.label) })),
    ...(table === undefined ? {} : { table: { head: lines(table.head), rows: table.rows.map(lines) } }),
    ...(picture === undefined ? {} : { picture: localPicture(picture, text) }),
  };
}

function localPicture(picture: Picture, text: (line: string) => string): Picture {
  const svg = picture.svg.replaceAll(
    /(<(?:text|tspan)\b[^>]*>)([^<]+)/g,
    (_, tag: string, words: string) => tag + text(words),
  );
  return { ...picture, svg, alt: text(picture.alt) };
}
