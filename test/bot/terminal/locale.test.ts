import { describe, expect, it } from 'vitest';
import { localeOfEnv } from '../../../bot/terminal/locale.ts';

// POSIX.1-2017, chapter 8.2: LC_ALL before the category, the category before LANG; an empty one counts as unset.
describe('the locale of the environment', () => {
  it.each([
    [{}, undefined],
    [{ LANG: 'C.UTF-8' }, undefined],
    [{ LANG: 'POSIX' }, undefined],
    [{ LANG: 'en_US.UTF-8' }, 'en-US'],
    [{ LANG: 'pt_BR' }, 'pt-BR'],
    [{ LANG: 'de' }, 'de'],
    [{ LANG: 'de_DE@euro' }, 'de-DE'],
    [{ LANG: 'en_US.UTF-8', LC_NUMERIC: 'de_DE.UTF-8' }, 'de-DE'],
    [{ LANG: 'en_US.UTF-8', LC_NUMERIC: 'de_DE.UTF-8', LC_ALL: 'C' }, undefined],
    [{ LANG: 'en_US.UTF-8', LC_ALL: '' }, 'en-US'],
    [{ LANG: '../../etc' }, undefined],
  ])('%o is %s', (env, locale) => expect(localeOfEnv(env)).toBe(locale));
});
