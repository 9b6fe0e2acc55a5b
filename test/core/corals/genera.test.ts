import { describe, expect, it } from 'vitest';
import { corals } from '../../../core/corals/coral-list.ts';
import type { CoralEntry } from '../../../core/corals/entry.ts';
import { findCorals, type Found } from '../../../core/corals/find.ts';
import { genera } from '../../../core/corals/genera.ts';

/** Whether a coral of the guide is of this genus, or was. */
function isOf({ scientific, names }: CoralEntry, genus: string): boolean {
  const written = [
    ...scientific.genera,
    ...scientific.species,
    ...scientific.superseded.map(({ name }) => name),
  ];
  const said = [...written, scientific.accepted, ...names.hobby, ...names.misspelt].map((name) =>
    name.toLowerCase(),
  );
  return said.some((name) => name.split(/[ ,/]+/).includes(genus.toLowerCase()));
}

function entriesOf(found: Found): readonly CoralEntry[] {
  return found.kind === 'one' ? [found.entry] : found.kind === 'several' ? found.entries : [];
}

/** Whether a look-up answers with a coral of another genus; what is only offered to choose from is a question. */
function isAnother(found: Found, genus: string): boolean {
  if (found.kind === 'no page') return found.genera.every(({ name }) => name !== genus);
  return found.kind === 'one' && !isOf(found.entry, genus);
}

/** Whether a misspelt name is taken for a coral of another genus; one without a page is only asked after. */
function isTakenFor(found: Found, genus: string): boolean {
  return found.kind === 'one' && !isOf(found.entry, genus);
}

/** The letter three places on in the alphabet. */
function on(letter: string): string {
  return String.fromCharCode(((letter.charCodeAt(0) - 94) % 26) + 97);
}

/** Every way to drop, double, swap or replace one letter; replaced by the one three places on in the alphabet. */
function typosOf(name: string): readonly string[] {
  const word = name.toLowerCase();
  return [...word].flatMap((letter, at) => {
    const [before, after, next = ''] = [word.slice(0, at), word.slice(at + 1), word[at + 1]];
    return [
      before + after,
      before + letter + letter + after,
      before + on(letter) + after,
      ...(next === '' || next === letter ? [] : [before + next + letter + after.slice(1)]),
    ];
  });
}

const real = new Set(genera.map(({ name }) => name.toLowerCase()));
const lookedUp = new Map<string, Found>();
function look(text: string): Found {
  const known = lookedUp.get(text) ?? findCorals(text);
  lookedUp.set(text, known);
  return known;
}

describe('the list of genera', () => {
  it('holds some hundreds, each once, and those of the guide', () => {
    expect(genera.length).toBeGreaterThan(300);
    expect(real.size).toBe(genera.length);
    const stony = corals.filter(({ group }) => group === 'large-polyp' || group === 'small-polyp');
    const missing = stony.flatMap(({ scientific }) =>
      scientific.genera.filter((name) => !real.has(name.toLowerCase())),
    );
    // Fire coral is a hydrozoan.
    expect(missing).toEqual(['Millepora']);
  });
});

describe('a real genus', () => {
  it('typed exactly is never answered as another', () => {
    const wrong = genera.filter(({ name }) => isAnother(look(name), name)).map(({ name }) => name);
    expect(wrong).toEqual([]);
  });

  it('is found, or said to have no page', () => {
    const lost = genera.filter(({ name }) => look(name).kind === 'none').map(({ name }) => name);
    expect(lost).toEqual([]);
  });

  it.each([
    'Acrhelia',
    'Coelastrea',
    'Coeloseris',
    'Montastrea',
    'Boninastrea',
    'Undaria',
    'Oculina',
    'Agaricia',
  ])('%s has no page, and relatives are offered', (name) => {
    for (const text of [name, `${name} sp.`, `green ${name}`, `${name} aspera`]) {
      const found = look(text);
      expect(found).toMatchObject({ kind: 'no page', genera: [{ name }], misspelt: false });
      expect(
        found.kind === 'no page' && found.near.length + (name === 'Montastrea' || name === 'Oculina' ? 1 : 0),
      ).toBeTruthy();
    }
  });

  it('stays itself as a part of a name of the guide', () => {
    expect(look('Lobophyllia agaricia')).toMatchObject({ kind: 'one' });
    expect(look('wellso')).toMatchObject({ kind: 'one', entry: { id: 'open-brain-trachyphyllia' } });
    expect(look('Wellsophyllia')).toMatchObject({ kind: 'one', entry: { id: 'open-brain-trachyphyllia' } });
  });

  it('with one letter wrong is mended to itself alone, or asked', () => {
    const wrong = genera.flatMap(({ name }) =>
      typosOf(name)
        .filter((_, index) => index % 11 === name.length % 11)
        .filter((typo) => !real.has(typo) && isTakenFor(look(typo), name))
        .map((typo) => `${typo} for ${name}: ${entriesOf(look(typo))[0]?.id ?? ''}`),
    );
    expect(wrong).toEqual([]);
  });
});

describe('a name of the guide with one letter wrong', () => {
  const names = corals.flatMap(({ names: { common }, scientific }) => [common[0], ...scientific.genera]);
  const typos = [...new Set(names)]
    .flatMap((name) => typosOf(name).map((typo) => [name, typo] as const))
    .filter((_, index) => index % 19 === 0);

  it('is found or offered in 95 of 100 cases, and found without asking for a page in 75', () => {
    const good = typos.filter(([name, typo]) => {
      const found = look(typo);
      const shown = found.kind === 'none' || found.kind === 'no page' ? found.near : entriesOf(found);
      return entriesOf(look(name)).some((entry) => shown.includes(entry));
    });
    const taken = typos.filter(([name, typo]) =>
      entriesOf(look(name)).some((entry) => entriesOf(look(typo)).includes(entry)),
    );
    expect(good.length / typos.length).toBeGreaterThan(0.95);
    expect(taken.length / typos.length).toBeGreaterThan(0.75);
  });
});
