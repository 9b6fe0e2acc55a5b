import english from './en.json' with { type: 'json' };

/** The sentences of the interface, by group and name, as ICU messages: "Page {at} of {pages}". */
export type Catalogue = typeof english;

/** "remind.stopIt": the group of a sentence and its name. */
export type SentenceKey = {
  readonly [G in keyof Catalogue]: `${G}.${keyof Catalogue[G] & string}`;
}[keyof Catalogue];

/** A language the interface speaks. */
export interface Language {
  /** BCP 47 tag: its rules of plural and number hold. */
  readonly locale: string;
  readonly sentences: Catalogue;
}

/** Every language there is; another one is its file and a line here. */
export const languages: readonly [Language, ...Language[]] = [{ locale: 'en', sentences: english }];

/** The language for somebody's locale ("en-US", "pt-BR"); the first there is where theirs is not spoken. */
export function languageOf(locale: string | undefined): Language {
  const [first] = languages;
  const wanted = locale?.toLowerCase().split('-')[0];
  return languages.find((each) => each.locale === wanted) ?? first;
}
