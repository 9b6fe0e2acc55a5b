import { describe, expect, it } from 'vitest';
import type { Option } from '../../../commands/options.ts';
import { suggest } from '../../../commands/suggest.ts';
import { findCorals } from '../../../core/corals/find.ts';
import { twoPersons } from './person.ts';

const base = { name: 'coral', kind: 'string', description: 'x', required: true } as const;
const coral: Option = { ...base, suggest: 'coral' };
const placed: Option = { ...base, suggest: 'placed' };

describe('corals of the guide', () => {
  it.each([
    ['torc', 'Torch coral'],
    ['hammer', 'Branching hammer coral'],
    ['hydnofora', 'Hydnophora'],
    ['acan', 'Acan lord'],
  ])('%s offers %s', (typed, name) => {
    const offered = suggest(coral, typed);
    expect(offered.join(), 'offered').toContain(name.split(' ')[0] ?? '');
    for (const one of offered) expect(findCorals(one).kind, one).not.toBe('none');
  });

  it('are offered before anything is typed, and none for nonsense', () => {
    expect(suggest(coral, '')).toHaveLength(25);
    expect(suggest(coral, 'xqzzzv')).toEqual([]);
  });
});

it("offers the member's own corals of the tank in use, and no one else's", () => {
  const [ada, bea] = twoPersons();
  ada.say('/coral add coral:torch at:left, back, low size:8 cm');
  ada.say('/coral add coral:zoas at:right, back, low size:4 cm label:Sun burst');
  expect(suggest(placed, '', { keep: ada.keep })).toEqual(['1: Torch coral', '2: Sun burst']);
  expect(suggest(placed, 'sun', { keep: ada.keep })).toEqual(['2: Sun burst']);
  for (const offered of suggest(placed, '', { keep: ada.keep })) ada.say(`/coral check coral:${offered}`);
  expect([suggest(placed, '', { keep: bea.keep }), suggest(placed, '')]).toEqual([[], []]);
  ada.say('/tank new name:Nano volume:60 L');
  ada.say('/tank use tank:Nano');
  expect(suggest(placed, '', { keep: ada.keep })).toEqual([]);
});
