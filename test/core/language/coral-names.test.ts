import { describe, expect, it } from 'vitest';
import { corals } from '../../../core/corals/coral-list.ts';
import type { CoralEntry } from '../../../core/corals/entry.ts';
import { findCorals } from '../../../core/corals/find.ts';
import { scan } from '../../../core/language/tokens.ts';

function coralsNamed(text: string): readonly string[] {
  return scan(text).names.flatMap(({ class: kind, id }) => (kind === 'coral' ? [id] : []));
}

function leadsTo(name: string): readonly CoralEntry[] {
  const found = findCorals(name);
  return found.kind === 'one' ? [found.entry] : found.kind === 'several' ? found.entries : [];
}

describe.each(corals.map((entry): [string, CoralEntry] => [entry.id, entry]))('%s', (_, entry) => {
  const first = entry.names.common[0];
  it('is first of all that its first common name can mean', () => expect(leadsTo(first)[0]).toBe(entry));

  it.each([
    `How much light does ${first} want?`,
    `bought a ${first.toLowerCase()} today, 3 heads`,
    `${first.toLowerCase()}?`,
  ])('is found by that name in "%s"', (text) => {
    const names = coralsNamed(text);
    expect(names).toHaveLength(1);
    expect(leadsTo(names[0] ?? '')).toContain(entry);
  });

  it('is found by its accepted name, or by each of several', () => {
    const names = coralsNamed(`where do I put ${entry.scientific.accepted}`);
    expect(names.length).toBeGreaterThan(0);
    for (const name of names) expect(leadsTo(name)).toContain(entry);
  });
});

describe('a name in a message', () => {
  it.each([
    ['goneopora needs what light', ['goneopora']],
    ['how much flow for a coelastrea', ['coelastrea']],
    ['how bright for a torchy one', ['torchy']],
    ['torch next to my plate coral', ['torch', 'plate coral']],
    ['put it on a plate with a cup of salt', []],
    ['my brain hurts', []],
    ['favorite galaxies of the whole month', []],
    ['the elegant medium fungal scorch', []],
  ])('%s', (text, names) => expect(coralsNamed(text)).toEqual(names));

  it('is one of the guide where its parts are a genus that is not', () =>
    expect(findCorals('micro mussa').kind).not.toBe('no page'));
});
