import { describe, expect, it } from 'vitest';
import { inLocale, languageInForce, localeInForce } from '../../../core/wording/in-locale.ts';
import { languages, type Language } from '../../../core/wording/language.ts';
import { say } from '../../../core/wording/say.ts';

const [english] = languages;
/** An invented second language: the sentences of the first between brackets. */
const bracketed: Language = {
  locale: 'pl',
  sentences: {
    ...english.sentences,
    answer: {
      ...english.sentences.answer,
      more: '⟦{page, plural, one {# str.} few {# strony} other {# stron}} z {pages}⟧',
    },
  },
};

function fails(): never {
  throw new Error('no');
}

describe('the locale in force', () => {
  it('is none where nobody is known to be spoken to', () => {
    expect(localeInForce()).toBeUndefined();
    expect(languageInForce()).toBe(english);
  });

  it('holds over what is awaited and never mixes with another', async () => {
    const seen = await Promise.all(
      ['de', 'pt-BR', 'en-US'].map((locale, at) =>
        inLocale(locale, async () => {
          await new Promise((resolve) => setTimeout(resolve, 10 - at));
          return localeInForce();
        }),
      ),
    );
    expect(seen).toEqual(['de', 'pt-BR', 'en-US']);
    expect(localeInForce()).toBeUndefined();
  });

  it('ends where the run throws', () => {
    expect(() => inLocale('de', fails)).toThrow('no');
    expect(localeInForce()).toBeUndefined();
  });

  it('speaks the first language where the wanted one is not spoken', () => {
    expect(inLocale('de', languageInForce)).toBe(english);
  });
});

describe('say', () => {
  // Plural classes of Polish: CLDR plural rules, cardinals: 1 one, 2 few, 5 many, 12 many, 22 few.
  it.each([
    [1, '⟦1 str. z 30⟧'],
    [2, '⟦2 strony z 30⟧'],
    [12, '⟦12 stron z 30⟧'],
    [22, '⟦22 strony z 30⟧'],
  ])('takes the plural class of the language: %i', (page, said) => {
    const more = (): string => say('answer.more', { page, pages: 30 });
    expect(inLocale('pl', more, bracketed)).toBe(said);
    expect(more()).toBe(`More (${page} of 30)`);
  });

  it('throws where a value is missing', () => {
    expect(() => say('answer.more', { page: 1 })).toThrow('pages');
  });
});
