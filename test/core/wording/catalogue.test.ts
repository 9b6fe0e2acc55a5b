import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { IntlMessageFormat } from 'intl-messageformat';
import { describe, expect, it } from 'vitest';
import { languages } from '../../../core/wording/language.ts';

const [english, ...others] = languages;
const keys = Object.entries(english.sentences).flatMap(([group, sentences]) =>
  Object.entries(sentences).map(([name, text]) => ({ key: `${group}.${name}`, text })),
);

const code = ['bot', 'commands', 'core']
  .flatMap((layer) =>
    readdirSync(layer, { recursive: true, encoding: 'utf8' }).map((name) => join(layer, name)),
  )
  .filter((file) => file.endsWith('.ts'))
  .map((file) => readFileSync(file, 'utf8'))
  .join('\n');

/** Beginnings of keys that code puts together: `ask.part-${part}`. */
const begun = [...code.matchAll(/`([a-z]+\.[\w-]*)\$\{/g)].map(([, start = '']) => start);

describe('the catalogue', () => {
  it('holds no sentence that nobody says', () => {
    const unused = keys.filter(
      ({ key }) => !code.includes(`'${key}'`) && !begun.some((start) => key.startsWith(start)),
    );
    expect(unused.map(({ key }) => key)).toEqual([]);
    expect(keys.length).toBeGreaterThan(500);
  });

  it.each(keys)('$key is a message', ({ text }) => {
    expect(() => new IntlMessageFormat(text, 'en', undefined, { ignoreTag: true })).not.toThrow();
    expect(text.trim()).toBe(text);
    expect(text).not.toBe('');
  });

  it('is whole in every other language, with the same values', () => {
    for (const { sentences } of others) {
      const theirs = new Map<string, string>(
        Object.entries(sentences).flatMap(([group, all]) =>
          Object.entries(all).map(([name, text]) => [`${group}.${name}`, text] as const),
        ),
      );
      for (const { key, text } of keys) expect(valuesOf(theirs.get(key) ?? ''), key).toEqual(valuesOf(text));
    }
    expect(valuesOf('{a, plural, one {# x of {b}} other {# y}}')).toEqual(['a', 'b']);
  });
});

function valuesOf(text: string): readonly string[] {
  return [...new Set([...text.matchAll(/\{(\w+)(?=[,}])/g)].map(([, name = '']) => name))].toSorted();
}
