import { describe, expect, it } from 'vitest';
import { Problem } from '../../../core/problem.ts';
import type { Case } from '../../../core/language/case.ts';
import { ask } from '../../ask.ts';
import { textOf } from '../text.ts';

/** The last answer of a story of short messages, with all before kept in its case. */
function lastAnswer(says: readonly string[]): string {
  let before: Case | undefined;
  const answers = says.map((text, at) => {
    const talk = { before, remember: (after: Case | undefined) => (before = after) };
    try {
      return textOf(ask(text, { nowMs: Date.UTC(2026, 10, 30, 12, at), zone: 'UTC', keep: undefined, talk }));
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      return error.message;
    }
  });
  return answers.at(-1) ?? '';
}

/** By what its last question leans on: the messages, what the last answer holds, and the sum by hand. */
const stories: Readonly<Record<string, readonly (readonly [string, RegExp, string])[]>> = {
  'a number without its name': [
    [
      'my nitrate is too high | card shows 50 | would be happy with 10 | tank is 100 litres | i can change 20 l at a time, new water has none | how many changes is that',
      /8 changes/,
      '0.8^n <= 10/50: n = 7.2, so 8',
    ],
    [
      'calcium seems low here | read 380 mg/l on the kit | system of 150 litres | aim for 420 | calcium chloride dihydrate in the cupboard | so how many grams',
      /\b22(\.0)? g\b/,
      '40 mg/L x 150 L = 6.0 g Ca x 3.668 (147.01/40.08, iupac21)',
    ],
    [
      'phosphate test done, 0.2 ppm | tank holds 50 gal | did it over more carefully, 0.3 | i will change 10 gallons tomorrow, mix has none | where will it be after that',
      /0\.24/,
      '0.3 x (1 - 10/50)',
    ],
  ],
  'water put right or in a vessel': [
    [
      'tank of 200 litres | alk 7 | want 8 | soda ash here | oh wait, 200 is the box. with rocks out it is 160 | so how much',
      /\b3(\.0\d?)? g\b/,
      '1 dKH / 2.8 x 53.0 mg x 160 L',
    ],
    [
      'i mix new salt water, salt takes 38 grams per litre for 35 | a bin of 40 litres | hm it is only filled to 30 litres | how much salt do i tip in',
      /1\.14 kg/,
      '38 g/L x 30 L',
    ],
    [
      '50 gal system | alk 7.2 want 8.2 | baking soda | i dissolve it in 1 litre of ro | so how much in all',
      /\b5\.[67]\d? g\b/,
      '1 dKH / 2.8 x 84.0 mg x 189.3 L',
    ],
  ],
  'one of several tanks': [
    [
      'there are two systems here, display 500 l and a frag tank of 100 l | the display uses 0.3 dkh a day | the frag tank uses 0.6 dkh a day | sodium bicarbonate for both | how much a day for the frag tank?',
      /\b1\.(79|8\d?) g\b/,
      '0.6 dKH / 2.8 x 84.0 mg x 100 L',
    ],
  ],
  'a number called wrong': [
    [
      '120 l tank | alk 6.4 today | no sorry, misread, 6.9 not 6.4 | goal is 7.9 | soda ash | how much',
      /\b2\.2\d? g\b/,
      '1 dKH / 2.8 x 53.0 mg x 120 L',
    ],
    [
      'i lose 4 l a day to evaporation | tank is 200 l at 35 ppt | sorry, 3 l it is, not 4 | away for 5 days and nobody tops off | where will salinity be',
      /37\.8/,
      '35 x 200 / (200 - 15)',
    ],
    [
      'calcium was 360 this morning | no wait, i read the wrong line, 390 and not 360 | tank 100 l | goal 420 | calcium chloride dihydrate | how many grams is it',
      /\b11(\.0)? g\b/,
      '30 mg/L x 100 L x 3.668',
    ],
  ],
  'two readings, and what went in between': [
    [
      '300 l reef, five years old | alk monday 8.6 | thursday it is 8.0 | nothing dosed in between | soda ash at hand | how much a day to hold it?',
      /\b1\.1\d? g\b/,
      '0.6 dKH in 3 days, 0.2 / 2.8 x 53.0 mg x 300 L',
    ],
    [
      'my calcium falls | sunday 440, in 200 litres | on thursday 424 | no dosing in between | i have calcium chloride dihydrate | how many grams a day to keep it there',
      /\b2\.9\d? g\b/,
      '16 mg/L in 4 days, 4 x 200 L x 3.668',
    ],
    [
      'i dosed 8 g of baking soda last night | alk was 7.0 before | water is 140 litres | what should it read now',
      /8\.9/,
      '7.0 + 8 g / 84.0 x 2.8 / 140 L',
    ],
  ],
  'a sum its facts ask for': [
    [
      'tank 100 l, salinity 35 | it loses 2 l a day | no top off works here | we are away 6 days | is that ok?',
      /39\.[678]/,
      '35 x 100 / (100 - 12) = 39.8 by volume, 39.6 by mass',
    ],
    [
      'nitrate climbs 5 ppm a week by itself | i change 25 percent every week | new water has none | will that go on for ever, where does it end',
      /\b20 mg/,
      '5 / 0.25',
    ],
    [
      'alk is 12 after a slip | tank 60 l | 15 l of new water stand ready, it tests 8 | where do i land if i use all of it',
      /\b11 dKH/,
      '12 + 15/60 x (8 - 12)',
    ],
  ],
  'a hurt told by its own words': [
    [
      'moving my lionfish was a mistake | it got me in the finger, spine | swelling up | should i cool it',
      /\bhot\b/,
      'hot water for fish spines: usual first aid, from memory',
    ],
    ['foxface stung me, a back spine in the thumb | hand is puffy | what do i do now', /\bhot\b/, 'the same'],
    [
      'a long spined urchin got me | spines in my hand, hurts | do i pull them?',
      /urchin|tweezer|spine/i,
      'the card of urchin spines',
    ],
  ],
  'too much went in': [
    [
      'my alk doser ran all night | it is soda ash, 50 g per litre | 200 ml went in | tank is 100 l, alk was 8 | how high is it now',
      /13\.3/,
      '8 + 10 g / 53.0 x 2.8 / 100 L',
    ],
    [
      'doser stuck on the alk side | the bottle lost 100 ml, usually 5 ml | baking soda, 80 g per litre, 80 l of water | it was 8.2 before | what is it now roughly',
      /11\.5/,
      '8.2 + 8 g / 84.0 x 2.8 / 80 L',
    ],
  ],
  'a question that need not ask back': [
    [
      'thinking of an acropora | par on the ledge is 90 | leathers sit on the top rock | so is 90 enough for it',
      /not enough|too (dim|little)|no\b/i,
      'common practice, no source',
    ],
    [
      'got my new lamp today | old par was 100 at the lps, new one gives 200 | i have a frogspawn and acans there | how slow do i go then',
      /week|days|%/i,
      'common practice, no source',
    ],
  ],
};

describe.each(Object.entries(stories))('%s', (_, told) => {
  it.each(told)('%s', (lines, holds) => expect(lastAnswer(lines.split(' | '))).toMatch(holds));
});

/** Misread by now, told in the same way. */
const misread: readonly (readonly [string, RegExp, string])[] = [
  // "and the small one?" is not heard as the same dose again: the usual range is told.
  [
    'i run two tanks. big one 300 l, small one 40 | alk in the big one is 7.5 | the small one reads 6.5 | both should be at 8 | i use soda ash | how much for the big one | and the small one?',
    /\b1\.1\d? g\b/,
    '1.5 dKH / 2.8 x 53.0 mg x 40 L',
  ],
  // Grams without the compound beside them: taken for salt mix.
  [
    'my 60 gal has alk 7 | my neighbor also has a tank, 20 gal, his alk is 6 | i want 8 | have baking soda | so how many grams for mine',
    /\b6\.8\d? g\b/,
    '1 dKH / 2.8 x 84.0 mg x 227.1 L',
  ],
];

describe('misread', () => {
  it.fails.each(misread)('%s', (lines, holds) => expect(lastAnswer(lines.split(' | '))).toMatch(holds));
});
