import { describe, expect, it } from 'vitest';
import { calledAs, typedNames } from '../../../core/corals/typed-names.ts';

function names(text: string): readonly string[] {
  return typedNames(text).map(({ entry, name }) => `${name} = ${entry.id}`);
}

describe('a coral as it was called', () => {
  it.each([
    ['is my trumpet ok with a war coral?', ['war coral = favites', 'trumpet = candy-cane-caulastraea']],
    ['Fimbriaphyllia paraancora', ['Fimbriaphyllia paraancora = hammer-coral-branching']],
    // Our own names, or a part of them.
    ['torch beside the duncans', []],
    ['Goniopora', []],
    // More than one coral is called so.
    ['hammer', []],
    ['flower pot', []],
    // Misspelt.
    ['hydnofora', []],
    ['the alkalinity of my tank', []],
  ])('%s', (text, found) => expect(names(text).toSorted()).toEqual([...found].toSorted()));

  it('is told so, with a capital where a sentence begins', () => {
    const called = typedNames('trumpet and war coral');
    expect(
      calledAs('Candy cane coral (Caulastraea furcata): easy. Favites: far from a Candy cane coral.', called),
    ).toBe('Trumpet (Caulastraea furcata): easy. War coral: far from a trumpet.');
  });

  it('leaves longer words alone', () =>
    expect(calledAs('Favitesia, Non-Favites', typedNames('war coral'))).toBe('Favitesia, Non-Favites'));
});
