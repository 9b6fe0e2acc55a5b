import { describe, expect, it } from 'vitest';
import { namedIn, sharedAnimals } from '../../../../core/care/subjects/named-in.ts';

const shared = (asked: string, told: string): number => sharedAnimals(namedIn(asked), namedIn(told));

describe('animals named in a text', () => {
  it.each([
    ['gsp on the glass', 'Star polyps'],
    ['my hammers', 'Torch, hammer, frogspawn'],
    ['toadstool', 'Leather'],
    ['palys', 'Zoas'],
    ['bubble tip', 'Anemones'],
    ['two clowns', 'Clownfish'],
    ['brain', 'Chalice, acan, brain'],
  ])('%s is spoken of by %s', (asked, told) => expect(shared(asked, told)).toBeGreaterThanOrEqual(1));

  it.each([
    ['hammer', 'Chalice, acan, brain, blasto: sawing'],
    ['duncan', 'Bubble, elegance'],
    ['mushroom', 'Leather frag does not stick'],
    ['my fish', 'Fish of a shoal'],
    ['heater for a nano', 'Nano below 40 L'],
  ])('%s is not spoken of by %s', (asked, told) => expect(shared(asked, told)).toBe(0));

  it('counts the name of a group for less than that of the animal', () => {
    expect(shared('toadstool', 'Soft corals')).toBeGreaterThan(0);
    expect(shared('toadstool', 'Soft corals')).toBeLessThan(1);
    expect(shared('torch', 'Soft corals')).toBe(0);
  });
});
