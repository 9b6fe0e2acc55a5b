import { localText } from '../core/quantity/local-text.ts';
import type { Answer, Fact, Picture } from './answer.ts';
import { withSentences } from './sentences.ts';

/**
 * An answer with its numbers and days as this locale writes them. What is no sentence of ours stays as it is: the command
 * that asks the same, what buttons run, the names of tanks and files.
 */
export function localAnswer<Given extends Answer>(given: Given, locale: string | undefined): Given {
  if (locale === undefined) return given;
  const text = (line: string): string => localText(line, locale);
  const lines = (each: readonly string[]): readonly string[] => each.map(text);
  const named = (fact: Fact): Fact => ({
    ...fact,
    label: text(fact.label),
    ...(fact.verdict === undefined ? {} : { verdict: text(fact.verdict) }),
  });
  const { facts, table, pictures, next } = given;
  return {
    ...withSentences({ ...given, facts: facts.map(named) }, text),
    next: next.map((one) => ({ ...one, label: text(one.label) })),
    ...(table === undefined ? {} : { table: { head: lines(table.head), rows: table.rows.map(lines) } }),
    ...(pictures === undefined ? {} : { pictures: pictures.map((one) => localPicture(one, text)) }),
  };
}

function localPicture(picture: Picture, text: (line: string) => string): Picture {
  const svg = picture.svg.replaceAll(
    /(<(?:text|tspan)\b[^>]*>)([^<]+)/g,
    (_, tag: string, words: string) => tag + text(words),
  );
  return { ...picture, svg, alt: text(picture.alt) };
}
