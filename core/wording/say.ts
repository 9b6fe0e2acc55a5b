import { IntlMessageFormat } from 'intl-messageformat';
import { languageInForce } from './in-locale.ts';
import type { Language, SentenceKey } from './language.ts';

/** What is put into a sentence, by name: text as it is to be read, or a count where the sentence has a plural. */
export type SentenceValues = Readonly<Record<string, string | number>>;

/**
 * A sentence of the interface (a title, the words on a button, an error, a question back) in the language in force.
 * Never at the top of a module, where no language is in force yet.
 *
 * @throws Error where a value is missing: a bug of ours.
 */
export function say(key: SentenceKey, values: SentenceValues = {}): string {
  return String(messageOf(languageInForce(), key).format(values));
}

const messages = new WeakMap<Language, Map<SentenceKey, IntlMessageFormat>>();

function messageOf(language: Language, key: SentenceKey): IntlMessageFormat {
  const made = messages.get(language) ?? new Map<SentenceKey, IntlMessageFormat>();
  messages.set(language, made);
  const known = made.get(key);
  if (known !== undefined) return known;
  const message = new IntlMessageFormat(sentenceOf(language, key), language.locale, undefined, {
    ignoreTag: true,
    formatters: { getNumberFormat, getDateTimeFormat, getPluralRules },
  });
  made.set(key, message);
  return message;
}

function sentenceOf({ sentences }: Language, key: SentenceKey): string {
  const [group = '', name = ''] = key.split('.');
  const found = (sentences as Readonly<Record<string, Readonly<Record<string, string>>>>)[group]?.[name];
  if (found === undefined) throw new Error(`no sentence ${key}`);
  return found;
}

/** Making one takes some 20 µs, and a file may have 20,000 lines to tell of. */
function madeOnce<Format>(
  make: (locale?: string | string[], options?: object) => Format,
): (locale?: string | string[], options?: object) => Format {
  const known = new Map<string, Format>();
  return (locale, options) => {
    const key = JSON.stringify([locale, options]);
    const format = known.get(key) ?? make(locale, options);
    known.set(key, format);
    return format;
  };
}

/** Counts without marks of thousands: a member may type back what is shown. */
const getNumberFormat = madeOnce(
  (locale, options) => new Intl.NumberFormat(locale, { ...options, useGrouping: false }),
);
const getDateTimeFormat = madeOnce((locale, options) => new Intl.DateTimeFormat(locale, options));
const getPluralRules = madeOnce((locale, options) => new Intl.PluralRules(locale, options));
