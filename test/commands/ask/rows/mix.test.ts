import { describe, expect, it } from 'vitest';
import { ask } from '../../../../commands/ask.ts';
import type { Answer } from '../../../../commands/answer.ts';
import type { Kind } from '../../../../core/language/kinds.ts';
import { plain, scriptedReader } from '../../../scripted-reader.ts';
import { textOf } from './asked-row.ts';

function answerTo(kind: Kind, marked: string): Answer {
  const reader = scriptedReader([{ marked, kinds: [[kind, 0.95]] }]);
  return ask(plain(marked), { nowMs: Date.UTC(2026, 10, 30, 12), keep: undefined, reader, zone: 'UTC' });
}

// Geometry by hand; 36 g of mix a litre at 35 ppt (common practice, no source).
describe('salt for a vessel that is told by its sides, or counted', () => {
  it.each([
    // pi/4 x 22^2 x 18 in3 = 6842 in3 = 112.1 L.
    [
      'can is [22"](length) across, filled [18"](length) deep, [35 ppt](wanted salinity)',
      '4.04 kg',
      '112.1 L',
    ],
    // pi/4 x 20^2 x 16 in3 = 82.4 L: the first of the two is the depth.
    ['water stands [16 inches](length) in a round tub [20 inches](length) diameter', '2.97 kg', '82.4 L'],
    ['bin [60](length) x [40](length), filled [30 cm](length), salt?', '2.59 kg', '72 L'],
    [
      'salt for [five](none) [5 gallon](part container) buckets at [35 ppt](wanted salinity)',
      '3.41 kg',
      '25 US gal',
    ],
  ])('%s', (text, salt, water) => {
    const { headline } = answerTo('salinity-mix', text);
    expect(headline).toContain(water);
    expect(headline).toContain(`Weigh in ${salt}`);
  });

  it('asks where two sides are not said to be of a round one', () =>
    expect(
      answerTo('salinity-mix', 'bin [60 cm](length) x [40 cm](length), [35 ppt](wanted salinity)').headline,
    ).toBe('How much salt water do you mix?'));

  it('in scoops, and in parts', () => {
    // 36 x 25 = 900 g in scoops of 150 g.
    expect(
      answerTo('salinity-mix', 'scoop is [150 g](amount), [25 l](part container) can, how many scoops')
        .headline,
    ).toContain('6 scoops of 150 g');
    expect(textOf(answerTo('salinity-mix', '[50 l](part container), salt in [two](none) goes'))).toContain(
      'in 2 equal parts: 900 g each',
    );
  });

  // (34.5 - 30.5) x 151.4 g.
  it('new water up to the reading of the tank', () =>
    expect(
      answerTo(
        'salinity-mix',
        '[40 gal](part container) bin reads [1.023](other salinity), tank [1.026](now salinity)',
      ).headline,
    ).toContain('add about 600 g'));
});

// The salt stays, or adds up: mass balance; 30 November 2026 is a Monday.
describe('salinity after days that are named', () => {
  it.each([
    [
      '[1 l](rate nothing) a day from [90 l](system), [35 ppt](now salinity), how salty by [the 6th](moment)',
      /After 6 days with nothing/,
    ],
    // 35 + 35 x 6 / 100 = 37.1.
    [
      'top-up jug has saltwater since [monday](moment), [1 l](rate nothing) a day in [100 l](system), [35 ppt](now salinity), till [sunday](moment)?',
      /After 6 days with salt water of 35 ppt it reads about 37\.1 ppt/,
    ],
    // 35 / (1 - 10/150 x 0.974) = 37.4.
    [
      'it evaporates from [150](rate nothing) to [140 l](rate nothing), [35](now salinity) goes to?',
      /^With nothing added it reads about 37\.4 ppt/,
    ],
    // 34.8 x (1 - 4/95) = 33.3.
    [
      'filled up with sweet instead of salt, [4 l](amount water) in [95 l](system), was [34.8](was salinity)',
      /fresh water takes salinity from 34\.8 ppt .* to 33\.3 ppt/,
    ],
  ])('%s', (text, first) => expect(answerTo('salinity-forecast', text).headline).toMatch(first));
});

// Mass balance of a well-mixed tank, by hand.
describe('changes', () => {
  it('says what was read beside what it comes to', () => {
    const told = '[30 %](changed water) and nitrate only went from [40](was nitrate) to [36](now nitrate)';
    expect(answerTo('change-once', told).facts[0]?.value).toMatch(
      /^You read 36 mg\/L: the change was smaller/,
    );
  });

  it.each<readonly [Kind, string, RegExp]>([
    [
      'change-once',
      '[30 %](changed water) and nitrate only went from [40](was nitrate) to [36](now nitrate)',
      /from 40 mg\/L to 28 mg\/L/,
    ],
    [
      'change-once',
      'does [20 %](changed water) only take nitrate from [50](now nitrate) to [40](now nitrate)',
      /to 40 mg\/L\. You read 40 mg\/L: it fits/,
    ],
    [
      'change-once',
      '[38 l](changed water) of [190 l](system) at [9 dkh](now alkalinity), new [12](other alkalinity), I keep [three](none coral) euphyllias',
      /^A 20 % change \(38 L\) takes alkalinity from 9 dKH to 9\.6 dKH/,
    ],
    [
      'change-goal',
      'bucket [20 l](changed water), tank [240 l](system), nitrate [75](now nitrate) to [15](wanted nitrate)',
      /^19 changes of 8\.3 % \(20 L each\)/,
    ],
    // 0.85^9 x 80 = 18.5.
    [
      'change-goal',
      'how many [15%ers](changed water), [80](now nitrate) no3 to [20](wanted nitrate)',
      /^9 changes of 15 %/,
    ],
    // 10 % of 40 = 4; 4 / 0.2 = 20.
    [
      'change-routine',
      '[ten percent](changed water) weekly for [a year](span), still [40](now nitrate)',
      /takes out 4 mg\/L.* 20 % would settle at 20 mg\/L/,
    ],
    // 1 - 0.99^30 = 26.0 %.
    [
      'change-drip',
      'two pumps, [1 %](changed water) a day, against a batch?',
      /30 changes of 1 % replace 26 %/,
    ],
  ])('%s: %s', (kind, text, first) => expect(answerTo(kind, text).headline).toMatch(first));
});

// (35 - 31)/35 x 85 L = 9.71 L.
it('salinity goes up by the top-off where that is asked', () =>
  expect(
    answerTo(
      'salinity-adjust',
      '[31 ppt](now salinity), [85 l](system), bring it up by way of the top-up jug',
    ).headline,
  ).toMatch(/Top off with salt water of 35 ppt in place of fresh: 9\.71 L in all, over at least 7 days/));
