import { AsyncLocalStorage } from 'node:async_hooks';
import { languageOf, type Language } from './language.ts';

/** Who is spoken to. */
interface Spoken {
  /** BCP 47 tag, as "pt-BR"; undefined where it is not known. */
  readonly locale: string | undefined;
  readonly language: Language;
}

const inForce = new AsyncLocalStorage<Spoken>();

/**
 * Runs for somebody with this locale ("en-US", "pt-BR"), what it awaits included: what is said and shown meanwhile is in
 * their language where it is spoken, with their numbers and dates. A platform enters here with each event it answers, so
 * that no function that may refuse something needs to be handed a language.
 */
export function inLocale<Result>(
  locale: string | undefined,
  run: () => Result,
  language: Language = languageOf(locale),
): Result {
  return inForce.run({ locale, language }, run);
}

/** The locale this runs for; undefined where none is known. */
export function localeInForce(): string | undefined {
  return inForce.getStore()?.locale;
}

/** The language this runs in. */
export function languageInForce(): Language {
  return inForce.getStore()?.language ?? languageOf(undefined);
}
