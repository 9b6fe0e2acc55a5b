import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { followedUp, goesOn } from '../../../core/words/follow-up.ts';

const dose = 'raise alk 7.2 to 8.4 in 75 gal with soda ash';
const change = 'nitrate 80, 55 gal, 20 % a week, how many to 10';
const pair = 'can torch and hammer sit next to each other?';

describe('followedUp', () => {
  it.each([
    [dose, 'and with baking soda?', 'raise alk 7.2 to 8.4 in 75 gal with baking soda'],
    [dose, "it's 60 gallons", 'raise alk 7.2 to 8.4 in 60 gallons with soda ash'],
    [dose, 'sorry 60 gal and baking soda', 'raise alk 7.2 to 8.4 in 60 gal with baking soda'],
    [dose, 'and to 9?', 'raise alk 7.2 to 9 in 75 gal with soda ash'],
    [dose, 'what about 9 dkh', 'raise alk 7.2 to 9 dkh in 75 gal with soda ash'],
    [dose, 'no, alk 7.4', 'raise alk 7.4 to 8.4 in 75 gal with soda ash'],
    ['raise alk 7.2 to 8.4', "it's 60 gallons", 'raise alk 7.2 to 8.4 in 60 gallons'],
    ['raise alk 7.2 to 8.4 in 60 gal', 'with soda ash', 'raise alk 7.2 to 8.4 in 60 gal with soda ash'],
    [change, 'and with 30 %?', 'nitrate 80, 55 gal, 30 % a week, how many to 10'],
    [change, 'and at 200 litres', 'nitrate 80, 200 litres, 20 % a week, how many to 10'],
    [change, 'or till 5', 'nitrate 80, 55 gal, 20 % a week, how many to 5'],
    ['1.030, 55 gal, want 1.026', 'what about 1.025', '1.030, 55 gal, want 1.025'],
    [pair, 'and a frogspawn?', 'can torch and frogspawn sit next to each other?'],
  ])('%s | %s', (before, later, together) => expect(followedUp(before, later)).toBe(together));

  it.each(['thanks!', 'and why?', 'how do i clean a skimmer', 'and the lights?'])(
    'is nothing for "%s"',
    (later) => expect(followedUp(dose, later)).toBeUndefined(),
  );

  it('takes any two texts without failing', () => {
    fc.assert(
      fc.property(fc.string(), fc.string(), (before, later) => {
        const together = followedUp(before, later);
        expect(together ?? '').not.toMatch(/undefined|NaN/);
      }),
    );
  });
});

describe('goesOn', () => {
  it.each([
    'and with baking soda?',
    "it's 60 gallons",
    '60 gal',
    'baking soda',
    'what about 9',
    'no 60',
    '75 gal net',
  ])('knows "%s"', (text) => expect(goesOn(text)).toBe(true));
  it.each(['raise alk 7 to 8', 'how many gallons is 60 litres', 'my torch is closed'])(
    'leaves "%s"',
    (text) => expect(goesOn(text)).toBe(false),
  );
});
