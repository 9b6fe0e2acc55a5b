import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { followedUp } from '../../../core/words/follow-up.ts';
import { goesOn } from '../../../core/words/goes-on.ts';

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
    [dose, 'sorry its 7.4 now', 'raise alk 7.4 to 8.4 in 75 gal with soda ash'],
    [dose, 'sorry 7 not 7.2', 'raise alk 7 to 8.4 in 75 gal with soda ash'],
    [dose, 'and calcium 380 to 420', 'calcium 380 to 420 in 75 gal'],
    [dose, 'ok and nitrate 40 to 10?', 'nitrate 40 to 10 in 75 gal'],
    [change, 'what about 30%', 'nitrate 80, 55 gal, 30% a week, how many to 10'],
    [change, 'and if it starts at 40', 'nitrate 40, 55 gal, 20 % a week, how many to 10'],
    ['my alk is 7', 'want 8.5, 75 gal, soda ash', 'my alk is 7 with soda ash want 8.5 in 75 gal'],
    ['raise alk 8 in 75 gal', 'its 7 now', 'raise alk 8 in 75 gal from 7'],
    [
      'calcium 380 to 420 in 60 gal',
      'dihydrate',
      'calcium 380 to 420 in 60 gal with calcium chloride dihydrate',
    ],
    ['alk 8.2 ca 410 mg 1280', 'and salinity 1.025', 'alk 8.2 ca 410 mg 1280 salinity 1.025'],
    ['what does 20 g soda ash do in 75 gal', 'and 30 g', 'what does 30 g soda ash do in 75 gal'],
    ['what does 20 g soda ash do in 75 gal', 'in 30 g', 'what does 20 g soda ash do in 30 g'],
    ['1.5 tsp baking soda in 40 gal', 'what about 2 tsp', '2 tsp baking soda in 40 gal'],
    [pair, 'and a frogspawn?', 'can torch and frogspawn sit next to each other?'],
  ])('%s | %s', (before, later, together) => expect(followedUp(before, later)).toBe(together));

  it.each(['thanks!', 'and why?', 'how do i clean a skimmer', 'and the lights?'])(
    'is nothing for "%s"',
    (later) => expect(followedUp(dose, later)).toBeUndefined(),
  );

  it.each([
    [dose, 'and how much salt for 20 gallons?'],
    [dose, 'and with 100 g?'],
    [dose, 'and salinity 1.023?'],
    [dose, 'what about calcium chloride'],
    [dose, 'its 60'],
    [dose, 'and 2 tsp'],
    ['salinity 1.022 want 1.026 90 gal', 'its 60'],
    ['refractometer 1.026, the 35 ppt fluid reads 1.028', 'and if it reads 1.027'],
    [dose, 'and 500 par for acropora 20 g'],
    ['alk 8.2 ca 410 mg 1280 no3 5', 'what about 7.5'],
    ['did a 15 gal wc on 75 gal, no3 was 32', 'and 20 gal?'],
  ])('never mixes "%s" with "%s"', (before, later) => expect(followedUp(before, later)).toBeUndefined());

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
