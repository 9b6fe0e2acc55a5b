import { describe, expect, it } from 'vitest';
import { fishKinds } from '../../../core/fish/fish-kinds.ts';
import { againstThem, inLitres, type Some } from '../../../core/fish/together.ts';

function some(name: string, count?: number): Some {
  const kind = fishKinds.find((one) => one.name === name);
  if (kind === undefined) throw new Error(name);
  return { kind, count };
}

/** All of these are common practice, no source. */
describe('fish together', () => {
  it('two clowns, four firefish, a gramma and a six-line in 150 L', () => {
    const fish = [some('clownfish', 2), some('firefish', 4), some('gramma'), some('six-line wrasse')];
    expect(againstThem(fish, 150)).toEqual([
      'the six-line wrasse bullies firefish, gramma',
      'at most one firefish, not 4',
      '8 fish, where about 5 to 7 small ones go',
    ]);
  });

  it('finds nothing against a peaceful list in 285 L', () =>
    expect(
      againstThem([some('goby'), some('gramma'), some('clownfish', 2), some('dwarf angel')], 285),
    ).toEqual([]));

  it('a tang wants length and water, two of them more', () => {
    expect(againstThem([some('tang')], 208)).toEqual(['a tang wants 300 L (80 gal) or more']);
    expect(againstThem([some('tang', 2)], 350)).toEqual(['at most one tang, not 2']);
    expect(againstThem([some('tang', 2)], 500)).toEqual([]);
  });

  it('hunters and slow eaters', () => {
    expect(againstThem([some('clownfish', 2), some('lionfish')], 250)[0]).toMatch(/lionfish eats/);
    expect(againstThem([some('seahorse', 2), some('clownfish', 2)], 250)[0]).toMatch(/seahorse starves/);
  });

  it('figures as round as practice', () => {
    expect(inLitres(300)).toBe('300 L (80 gal)');
    expect(inLitres(110)).toBe('110 L (29 gal)');
  });
});
