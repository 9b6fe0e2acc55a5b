import { languages, type Catalogue, type Language } from '../../core/wording/language.ts';

const [english] = languages;

/** An invented second language: every sentence of the first between brackets, so that what is said is known by sight. */
export const bracketed: Language = { locale: 'en', sentences: withBrackets(english.sentences) };

function withBrackets(sentences: Catalogue): Catalogue {
  const text = JSON.stringify(sentences, (_, value: unknown) =>
    typeof value === 'string' ? `⟦${value}⟧` : value,
  );
  return JSON.parse(text) as Catalogue;
}

/** Whether something of a text is from the catalogue. */
export function isSaid(text: string): boolean {
  return text.includes('⟦');
}
