import { describe, expect, it } from 'vitest';
import { ask } from '../../../../commands/ask.ts';
import type { Answer } from '../../../../commands/answer.ts';
import type { Kind } from '../../../../core/language/kinds.ts';
import { plain, scriptedReader } from '../../../scripted-reader.ts';
import { number, textOf } from './asked-row.ts';

function answerTo(kind: Kind, marked: string): Answer {
  const reader = scriptedReader([{ marked, kinds: [[kind, 0.95]] }]);
  return ask(plain(marked), { nowMs: 0, keep: undefined, reader });
}

// Numbers by hand: mass balance of a well-mixed tank, c = cs + (c0 - cs)(1 - f)^n (stoichiometry, no other source).
describe('a change read right is answered right', () => {
  it.each<readonly [Kind, string, RegExp]>([
    // 35 -> 10 with 2 a week, 10 of 150 L twice a week: 1 between changes settles at 1 / 0.0667 = 15.
    [
      'change-goal',
      'climbs [2](rate nitrate) a week, does [10 litres](changed water) twice a week get [150 l](system) from [35](now nitrate) to [10](wanted nitrate)',
      /every 3\.5 days nitrate never gets to 10 mg\/L: it settles between 14 mg\/L and 15 mg\/L/,
    ],
    // 80 x 0.5^3 = 10.
    [
      'change-goal',
      '[80](now nitrate) nitrate, [3](count) changes, want [10](wanted nitrate)',
      /^3 changes of 50 % .* bring/,
    ],
    // 33 x 0.88^5 = 17.4.
    [
      'change-goal',
      '[5](count) of [12 %](changed water), nitrate [33](now nitrate), remaining?',
      /to 17\.4 mg\/L/,
    ],
    // 9 x 12 = 108 of 450 L: 24 %, 33 x 0.76 = 25.1.
    [
      'change-once',
      '[9](count) buckets of [12 l](changed water), [450 l](system), no3 [33](now nitrate), after?',
      /^A 24 % change \(108 L\) takes nitrate from 33 mg\/L to 25\.1 mg\/L/,
    ],
    // (10.5 - 9.5) / (10.5 - 8) = 0.4.
    [
      'change-once',
      'lose [1 dkh](change alkalinity) off [10.5](now alkalinity) with a mix of [8](other alkalinity), what %',
      /^One change of 40 % .* 9\.5 dKH/,
    ],
    // 34 + 0.25 x (36 - 34) = 34.5.
    [
      'change-once',
      'salt mix [36 ppt](other salinity), tank [34 ppt](now salinity), [50](changed water) of [200](system), then?',
      /takes salinity from 34 ppt .* to 34\.5 ppt/,
    ],
    // 12 / 0.25 = 48, and 48 - 12 = 36.
    [
      'change-routine',
      '[25 %](changed water) each month, makes [12](rate nitrate) nitrate a month, plateau?',
      /settles at 48 mg\/L just before a change and 36 mg\/L just after/,
    ],
    // 0.02 x 14 = 0.28; 0.28 / 0.15 = 1.867.
    [
      'change-routine',
      '[15 %](changed water) each fortnight, phosphate gains [0.02](rate phosphate) a day',
      /every 14 days phosphate settles at 1\.867 mg\/L/,
    ],
    // 3 / 15 = 20 % of 400 L.
    [
      'change-routine',
      'what change holds [400 litres](system) under [15](limit nitrate) making [3](rate nitrate) nitrate a week',
      /^To keep nitrate from passing 15 mg\/L, change 20 % \(80 L\) every 7 days/,
    ],
    // 0.8 / 4 = 20 % of 350 L a day.
    [
      'change-drip',
      'makes [0.8](rate nitrate) a day, aiming at [4](wanted nitrate), [350 l](system), how much a day should the pump push',
      /change 20 % \(70 L\) every 1 day/,
    ],
    // ln(8 / 22) / ln 0.97 = 33.2.
    [
      'change-drip',
      '[3 %](changed water)/day, no3 [22](now nitrate), want [8](wanted nitrate)',
      /^34 changes of 3 % .* 33 days/,
    ],
    // 1 - 1/e = 63.2 %.
    [
      'change-drip',
      'drip [100 %](changed water) over [a week](span), is that [63 %](changed water)?',
      /takes out 63\.2 % of the old water/,
    ],
    // 20 mL x 1440 = 28.8 L a day of 85 L.
    [
      'change-drip',
      'pump [20 ml](changed water)/min in [85 l](system)',
      /^Not quite the same: 33\.9 % bit by bit/,
    ],
  ])('%s: %s', (kind, marked, first) => expect(answerTo(kind, marked).headline).toMatch(first));

  it('small ones against a large one by what each replaces', () => {
    // 4 of 5 %: 1 - 0.95^4 = 18.5 %, against 20 %.
    const given = answerTo(
      'change-drip',
      '[10 l](changed water) a week or [40 l](changed water) every 4 weeks on [200 l](system)',
    );
    expect(number(given.headline.split('replace')[1] ?? '', '%')).toBeCloseTo(18.5, 1);
  });

  it('a salinity that would move too far is warned of', () => {
    // 31 + 0.5 x (36 - 31) = 33.5: 2.5 ppt at once.
    const given = answerTo(
      'change-once',
      'tank [31 ppt](now salinity), mix [36 ppt](other salinity), [50 %](changed water)',
    );
    expect(given.headline).toContain('33.5 ppt');
    expect(textOf(given)).toMatch(/2\.5 ppt at once/);
  });
});
