import { localText } from '../core/quantity/local-text.ts';
import type { Answer, Picture } from './answer.ts';
import { withTexts } from './sentences.ts';

/**
 * An answer with its numbers and days as this locale writes them. What is no sentence of ours stays as it is: the command
 * that asks the same, what buttons run, the names of tanks and files.
 */
export function localAnswer<Given extends Answer>(given: Given, locale: string | undefined): Given {
  if (locale === undefined) return given;
  const text = (line: string): string => localText(line, locale);
  const { pictures, next } = given;
  return {
    ...withTexts(given, text),
    next: next.map((one) => ({ ...one, label: text(one.label) })),
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
