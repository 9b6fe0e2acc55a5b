import { describe, expect, it } from 'vitest';
import { answerTo } from '../said-answer.ts';
import { textOf } from './asked-row.ts';

describe('how many changes', () => {
  // 0.75^n = 0.1/0.4: n = 4.82
  it('of a part of one, without a volume', () => {
    const text =
      'phosphate [.4](now phosphate) want [.1](wanted phosphate), shifting a [quarter](none) each time, how many';
    expect(answerTo('change-goal', text).headline).toMatch(/^5 changes of 25 %/);
  });

  // 0.9^n = 15/60: n = 13.16
  it('of so many percents', () => {
    const text = 'how many [10 percents](changed), no3 [60](now nitrate) to [15](wanted nitrate)';
    expect(answerTo('change-goal', text).headline).toMatch(/^14 changes of 10 %/);
  });
});

describe('a batch so far', () => {
  // 1.021 on 25/25 is 27.9 ppt (EOS-80): 7.1 ppt x 60 L x 1 g.
  it('is what it reads, and 35 ppt the goal', () => {
    const text =
      "mixing drum's [60 l](part container), only got to [1.021](wanted salinity) so far, how much more";
    expect(answerTo('salinity-mix', text).headline).toContain('add about 426 g of salt mix');
  });
});

describe('what was not done', () => {
  it('is no cause', () => {
    const given = answerTo('moved', 'alk was [8](was alkalinity) now [10,5](now alkalinity) without dosing');
    expect(textOf(given)).not.toMatch(/a doser/);
    expect(given.headline).toContain('a water change');
  });
});

describe('too much of what is no salt', () => {
  it('has the general steps, and no parameter that was not named', () => {
    const given = answerTo('urgent-water', 'i poured the entire iodine bottle in', 'overdose');
    expect(given.headline).toMatch(/^Stop whatever still adds it/);
    expect(textOf(given)).not.toMatch(/alkalinity/);
    expect(textOf(given)).toMatch(/activated carbon/);
    expect(answerTo('urgent-water', 'my doser ran all night', 'overdose').headline).toMatch(
      /^Stop everything that adds it/,
    );
  });
});

describe('times of the clock', () => {
  it('are no levels', () => {
    const text =
      'i gave the alkalinity at [7](now alkalinity), and at [8](moment) he has given it again, [25 ml](amount) each, into [300 litres](system)';
    expect(textOf(answerTo('overdose', text))).not.toMatch(/7 dKH/);
  });
});

describe('the water in a box', () => {
  // 90 x 45 x 45 cm = 182.25 L and 24 L; 20 kg of rock push aside 7.4 to 9.1 L (2.2 to 2.7 g/mL, common practice).
  it('stands as low as was said', () => {
    const text =
      '[90](length)x[45](length)x[50 cm](length), water stops [5 cm](length) under the rim, sump [24 l](part sump), [20 kg](amount) of rock';
    expect(answerTo('volume', text).headline).toMatch(/^About 19[78]/);
    expect(textOf(answerTo('volume', text))).not.toMatch(/not used: (?:5 cm|20 kg)/);
  });
});

describe('how many spoons', () => {
  it('is told as a range beside the grams', () => {
    const text =
      'calcium came out [360](other calcium) and corals want [420](wanted calcium), [40 gallons](system), calcium chloride, how many level tablespoons';
    // 25 g at 3.5 to 5 g a teaspoon.
    expect(textOf(answerTo('dose-amount', text))).toContain('roughly 5 to 7.1 level teaspoons');
  });
});
