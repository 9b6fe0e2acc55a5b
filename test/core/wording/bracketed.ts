import { inLocale } from '../../../core/wording/in-locale.ts';
import { languages, type Catalogue, type Language } from '../../../core/wording/language.ts';

const [english] = languages;

/** An invented second language: every English sentence between brackets. */
const bracketed: Language = {
  locale: 'qps',
  sentences: Object.fromEntries(
    Object.entries(english.sentences).map(([group, sentences]) => [
      group,
      Object.fromEntries(Object.entries(sentences).map(([name, text]) => [name, `⟦${text}⟧`])),
    ]),
  ) as unknown as Catalogue,
};

/** Runs where that language is in force. */
export function inBrackets<Result>(run: () => Result): Result {
  return inLocale('qps', run, bracketed);
}
