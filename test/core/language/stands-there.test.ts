import { expect, it } from 'vitest';
import { standThere } from '../../../core/language/stands-there.ts';
import { scan } from '../../../core/language/tokens.ts';

const there = (text: string): readonly string[] => standThere(scan(text)).map(({ id }) => id);

it.each([
  [
    '3 foot tank, leather dead centre, star polyps on their own island. is there room for a torch',
    ['leather', 'star polyps'],
  ],
  ['i have a torch on the left and zoas in the middle, what else fits', ['torch', 'zoas']],
  ['would a hammer fit beside my toadstool', ['toadstool']],
  ['what can i add, i already keep zoas', ['zoas']],
])('stands there: %s', (text, ids) => expect(there(text)).toEqual(ids));

it.each([
  'i want a hammer left, zoanthids on the centre rock and two acropora on top. what would still fit',
  'planning a torch on the left and zoas in front',
  'i have a 40 gal and want a torch',
  'torch, galaxea and a leather in a 20 gallon, does that work',
])('wished for, or not said: %s', (text) => expect(there(text)).toEqual([]));
