import { describe, expect, it } from 'vitest';
import { lazyReader } from '../../../bot/reader/load.ts';
import { noCase, withMoment } from '../../../core/language/case.ts';
import { withPutRight } from '../../../core/language/put-right.ts';
import type { Slots } from '../../../core/language/slots.ts';
import { tanksSpoken } from '../../../core/language/tank-spoken.ts';
import { scan } from '../../../core/language/tokens.ts';

const told = (slots: Slots) => withMoment(noCase, { atMs: 0, kind: 'told', slots }, 'x');

describe('a number told before that a message calls wrong', () => {
  it.each([
    ["wait, 300 is what is printed, it's 250 of water", { volume: '300 l' }, 'system', '250 l'],
    ['10 is the old can, sorry, that one holds 25 l', { container: '10 l' }, 'part', '25 l'],
    ['so 600 not 480. forget the 480', { volume: '480 l' }, 'system', '600 l'],
    ['4 l a day, not 3', { waterRate: '3 l', waterRateDays: 1 }, 'rate', '4 l'],
  ] as const)('%s', (text, slots, part, meant) => {
    const { said } = withPutRight(lazyReader.read(text), told(slots));
    expect(said.filter((one) => one.text === meant).map((one) => one.part)).toEqual([part]);
  });
});

describe('the tanks a message names', () => {
  it.each([
    ['two tanks, the big one 300 l, the small one 40', ['big', 'small']],
    ['the display and a frag system', ['display', 'frag']],
    ['the big one hides behind the rock', []],
    ['a small piece of frag rock', []],
  ])('%s', (text, names) => expect(tanksSpoken(scan(text), noCase).map(({ name }) => name)).toEqual(names));

  it('are called as the case calls them', () => {
    const before = withMoment(
      noCase,
      [
        { atMs: 0, kind: 'told', slots: {}, about: 'display' },
        { atMs: 0, kind: 'told', slots: {}, about: 'frag' },
      ],
      'x',
    );
    expect(tanksSpoken(scan('and the little one?'), before).map(({ name }) => name)).toEqual(['frag']);
    expect(tanksSpoken(scan('and for the other one?'), before).map(({ name }) => name)).toEqual(['display']);
  });
});
