import { describe, expect, it } from 'vitest';
import { coralsIn } from '../../../core/words/corals.ts';
import { asked } from '../../corpus.ts';

const idsIn = (text: string) => coralsIn(text).map(({ entries }) => entries.map(({ id }) => id));

describe('corals named in a sentence', () => {
  it.each([
    [
      'can torch and hammer sit next to each other',
      [['torch-coral'], ['hammer-coral-branching', 'hammer-coral-wall']],
    ],
    ['my euphilia hamer', [['hammer-coral-branching', 'hammer-coral-wall']]],
    ['zoas and zoas again', [['zoanthus']]],
    ['a long tentacle plate by the green star polyps', [['heliofungia'], ['green-star-polyps']]],
    ['a plate on the sun deck, a cup of tea, blue led', []],
    ['nothing at all', []],
  ])('%s', (text, expected) => expect(idsIn(text)).toEqual(expected));

  it('are not found where members speak of water', () => {
    const named = Object.entries(asked).flatMap(([id, text]) =>
      coralsIn(text.toLowerCase()).map(({ name }) => `${id}: ${name}`),
    );
    expect(named).toEqual(['G01: acros']);
  });

  it('are at most six of a long text', () => {
    expect(
      coralsIn('torch duncan zoas xenia goniopora frogspawn bowerbanki ricordea'.repeat(40)),
    ).toHaveLength(6);
  });
});
