/**
 * The locale of a terminal as POSIX variables tell it ("pt_BR.UTF-8" is pt-BR), numbers first; undefined where they tell
 * none (unset, C or POSIX).
 */
export function localeOfEnv({
  LC_ALL,
  LC_NUMERIC,
  LANG,
}: Readonly<Record<string, string | undefined>>): string | undefined {
  const named = [LC_ALL, LC_NUMERIC, LANG].find((value) => value !== undefined && value !== '');
  const [, language, country] = /^([a-z]{2,3})(?:_([A-Z]{2}))?(?:[.@]|$)/.exec(named ?? '') ?? [];
  return language === undefined ? undefined : [language, country].filter(Boolean).join('-');
}
