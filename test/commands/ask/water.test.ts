import { describe, expect, it } from 'vitest';
import { faults, type Expected } from '../../cases/case.ts';
import { reached } from '../../ask.ts';
import { shown } from './shown.ts';

/** What is wrong with the best of what is shown; one answer given as if sure is the best there is. */
function faultsIn(question: string, expected: Expected): readonly string[] {
  const all = shown(question).map((text) => faults(text, expected));
  return all.find((wrong) => wrong.length === 0) ?? all[0] ?? ['nothing is shown'];
}

/**
 * Weights IUPAC 2021: 1 dKH in 100 L = 1.890 g Na2CO3 = 2.996 g NaHCO3; Ca 36.11 % of CaCl2, 27.26 % of CaCl2.2H2O.
 * 1 US gal = 3.785412 L (NIST Handbook 44). Dilution: after n changes of share f, (1 - f)^n is left.
 */
describe('what is worked out', () => {
  const read: readonly [string, RegExp, number][] = [
    ['alk 7 need 8.5 in 55 gal, soda ash', /([\d.]+) g of sodium carbonate/, 1.5 * 2.082 * 1.89],
    [
      'I need a 1.5 dkh bump on 120 gallons w/ soda ash',
      /([\d.]+) g of sodium carbonate/,
      1.5 * 4.5425 * 1.89,
    ],
    ['raise alk 1.5 dkh in 75 gal with soda ash', /([\d.]+) g of sodium carbonate/, 1.5 * 2.8391 * 1.89],
    [
      'how much soda ash to go from 7 to 8.5 in 75 gal',
      /([\d.]+) g of sodium carbonate/,
      1.5 * 2.8391 * 1.89,
    ],
    ['from 7.5 up to 8.5 dkh in 284l with bicarb', /([\d.]+) g of sodium bicarbonate/, 2.84 * 2.996],
    [
      'tank uses 1.2 dkh a day 100 gal how much soda ash daily',
      /([\d.]+) g of sodium carbonate/,
      1.2 * 3.7854 * 1.89,
    ],
    [
      'my calcium drops 15 ppm a week in 300 liters, how much calcium chloride dihydrate',
      /([\d.]+) g of calcium/,
      (0.015 * 300) / 7 / 0.2726,
    ],
    ['alk 8.4 mon and 7.9 wed how much does it use a day 75 gal', /about ([\d.]+) dKH/, 0.25],
    [
      '100 ppm nitrate 75g how many 30% changes to 20',
      /^(\d+) changes of 30 %/,
      Math.ceil(Math.log(0.2) / Math.log(0.7)),
    ],
    ['whats the dose of bicarb for 1 dkh in 75g', /([\d.]+) g of sodium bicarbonate/, 2.8391 * 2.996],
    ['need 12 ppm more calcium in 180 l how much calcium chloride dihydrate', /([\d.]+) g of/, 2.16 / 0.2726],
    [
      'alk went from 8.6 to 7.4 in 3 days 200l',
      /uses about ([\d.]+) dKH of alkalinity a day[^]*nothing added in between/,
      0.4,
    ],
    ['my alk slid from 9 to 8.1 over a week whats the daily use', /uses about ([\d.]+) dKH/, 0.9 / 7],
    ['tank 9 dkh salt mix 12 dkh 10%', /to ([\d.]+) dKH/, 9.3],
    ['nitrate is 60 i do 30% what will it read', /to ([\d.]+) mg/, 42],
    ['dkh to ppm 9', /([\d.]+) ppm CaCO3/, 9 * 17.848],
    ['po4 .08 in ppb', /is ([\d.]+) µg/, 80],
    // 0.9^3 = 0.729 and 0.75^2 = 0.5625 are left.
    ['three 10% water changes equal how much', /replace ([\d.]+) %/, 27.1],
    ['tank holds 250l, water change 50 l no3 25 what after', /to ([\d.]+) mg/, 20],
    ['wc 30 gal of 100 gal, ca 380, salt has 440', /to ([\d.]+) mg/, 380 + 0.3 * 60],
    // PSS-78 / EOS-80 at 25/25: 1.023 = 30.54, 1.026 = 34.51, 1.030 = 39.78 ppt.
    [
      'new salt mix reads 1.023 in 32 gallon trash can how much more salt for 1.026',
      /about ([\d.]+) g/,
      3.97 * 121.13,
    ],
    ['40 gal mixed at 1.030 how much ro to get 1.026', /add ([\d.]+) L/, (39.78 / 34.51 - 1) * 151.4],
    ['40 gal mixed at 1.030 how much ro to get 1.026', /swap ([\d.]+) L/, (1 - 34.51 / 39.78) * 151.4],
    ['how many grams salt per liter for 35ppt', /Weigh in ([\d.]+) g/, 36],
    ['two 25% changes same as one 50?', /Not the same: .* replace ([\d.]+) %/, 43.75],
    [
      'want kh 9, its 7.4 now, tank is 130 L, baking soda',
      /([\d.]+) g of sodium bicarbonate/,
      1.6 * 1.3 * 2.996,
    ],
    [
      'how long till nitrate 5 if i do 10 gal a week on 60 gal starting at 40',
      /^(\d+) changes of 16\.7 %/,
      Math.ceil(Math.log(5 / 40) / Math.log(5 / 6)),
    ],
    ['alk 8 dkh in tank, 7 in new salt, 30%', /to ([\d.]+) dKH/, 7.7],
    ['alk dropped to 6, tank 120 gal, goal 8.5, sodium bicarbonate', /([\d.]+) g of/, 2.5 * 4.5425 * 2.996],
    ['alk is 7, 8 is my goal, 50 gal, soda ash', /([\d.]+) g of sodium/, 1.893 * 1.89],
    ['refractometer reads 1.027 on 35ppt fluid, tank reads 1.025', /about ([\d.]+) ppt/, 32.4],
    ['went from 60 gal to 120 gal tank how much soda ash for 1 dkh', /([\d.]+) g of/, 4.5425 * 1.89],
    ['120g, prob 95 net, mg 1180 -> 1300, epsom', /([\d.]+) g of magnesium/, (0.12 * 359.6) / 0.0986],
    ['alk 9 on monday 8.1 on thursday', /uses about ([\d.]+) dKH/, 0.3],
  ];
  /** Known misses: not read as they are meant, or not offered. */
  const misread: readonly [string, RegExp, number][] = [
    [
      'add 30 ppm ca to 100 gallons calcium chloride dihydrate',
      /([\d.]+) g of calcium/,
      (0.03 * 378.54) / 0.2726,
    ],
    [
      '500g soda ash in 1 gal how many ml for 1 dkh in 100 gal',
      /([\d.]+) mL of that solution/,
      (3.7854 * 1.89) / (500 / 3785.4),
    ],
    [
      '300 g calcium chloride dihydrate in 2 L, how many ml raises 20 ppm in 75 gal',
      /([\d.]+) mL of that/,
      (0.02 * 283.9) / 0.2726 / 0.15,
    ],
    ['alk 7.5-8.5 75 gal baking soda', /([\d.]+) g of sodium bicarbonate/, 2.8391 * 2.996],
    ['how many grams calcium chloride dihydrate for 20 ppm in 500 l', /([\d.]+) g of/, 10 / 0.2726],
    ['wc water tested calcium 460 tank 390 change 30 percent', /to ([\d.]+) mg/, 411],
    ['f to c 80', /is ([\d.]+) °C/, 26.67],
    ['no3-n 2.5 ppm is what nitrate', /nitrate: ([\d.]+) mg/, 2.5 * (62.004 / 14.007)],
    ['18 ppb phosphorus?', /is ([\d.]+) mg\/L phosphate/, 0.018 * 3.066],
    // Both numbers are taken for those of the new water.
    [
      'alk in my new salt is 11 my tank is 7.5, 20% water change what will alk be',
      /to ([\d.]+) dKH/,
      7.5 + 0.2 * 3.5,
    ],
    // Judged as a light; the hours are not used. Daily light: PPFD x hours x 0.0036.
    ['par 200 for 10 hours whats the dli', /is ([\d.]+) mol/, 7.2],
    // Asked back what a number is: the rise, the salt.
    [
      'how much baking soda for 2dkh in a 40 gal tank',
      /([\d.]+) g of sodium bicarbonate/,
      2 * 1.5142 * 2.996,
    ],
    ['alk 10 dkh tank, 8 dkh salt, 20% wc', /to ([\d.]+) dKH/, 9.6],
  ];

  it.each(read)('%s', (question, at, value) => {
    expect(faultsIn(question, { values: [{ at, value }], says: [], never: [] })).toEqual([]);
  });

  it.fails.each(misread)('%s', (question, at, value) => {
    expect(faultsIn(question, { values: [{ at, value }], says: [], never: [] })).toEqual([]);
  });
});

/** No answer to another question: what must be said, and what must not. */
describe('what is not taken for something else', () => {
  const read: readonly [string, RegExp, RegExp][] = [
    ['sal is 32ppt want 35 in 200l how much salt', /swap/, /Weigh in/],
    // What it came to is not what is wanted: back down, with fresh water.
    ['sg went from 1.025 to 1.028 when ato failed 40 gal', /for fresh/, /for salt water/],
    ['how much salt do i add to a 55 gallon to go from 1.022 to 1.025', /swap/, /Weigh in/],
    ['part 1, how many grams for 2l', /^Which powder is it/, /2000 mL/],
    ['how quickly is it safe to lower salinity', /0\.001 in specific gravity/, /did not find/],
    ['25% water change', /^Which reading is it about: nitrate/, /2 changes/],
    [
      'light went from 150 to 250 par how fast can i ramp',
      /Raise it from 150 PAR to 250 PAR/,
      /Whether it is/,
    ],
    [
      'where does a goni go 90 par sand 200 rock',
      /^Goniopora, spot: on rock or sand/,
      /Whether it is too much depends/,
    ],
    ['what should i test weekly', /Not everything every day/, /did not find/],
    ['1 cup epsom in 100 gal', /^1 cup of magnesium sulfate heptahydrate: how strong/, /salt mix/],
    ['how much epsom salt for 50 gallons', /^What does it read now, and what should it be/, /salt mix/],
    ['refractometer 1.026 hydrometer says 1.023 which one is right', /Change nothing/, /swap/],
    ['my refractometer says 34 but hydrometer 1.023', /3\.5 ppt apart/, /swap/],
    ['my sg is 1.021 dead snails', /^Salinity 1\.021 SG is far too low\.[^]*27\.9 ppt/, /mS\/cm/],
    ['my alk is 3.2 want 8, 100 L soda ash', /3\.2 meq\/L/, /\d g of sodium/],
    ['raise ph from 7.8 to 8.2 in 100 gal', /Nothing is dosed for pH/, / g of /],
    ['temp 84 want 78', /temperature high/, /not what you want/],
    [
      'i added 3 tablespoons of baking soda to 60 gal by accident',
      /Stop everything that adds it/,
      /spread it over/,
    ],
    ['oops added 2 cups of kalk to sump 120 gal', /Stop everything that adds it/, /salt mix/],
    [
      'i added 20g baking soda to 75 gal and alk went from 7.4 to 8.1',
      /raises alkalinity by 2\.35/,
      /Dissolve/,
    ],
    ['how do i dose ammonia to start cycle 2ppm in 40 gal', /ammonia/, /Urgent/],
    ['sodium hydroxide for alk 100 l 1 dkh', /no amounts of/, /hard to believe/],
    ['raise nitrate 5 ppm in 100 gal with kno3', /nitrate up by 5 mg\/L/, /usual range/],
    [
      'how much vodka to dose in 100 gal',
      /^I give no millilitres: begin at a quarter of what the label says, or less, [\s\S]*takes the oxygen/,
      /378/,
    ],
    ['fenbendazole for hydroids 40g', /never give a dose of a medicine/, /soda ash/],
    ['is it ok to raise alk 3 dkh in one day', /No, not 3 dKH in one day/, /Which compound/],
    ['my alk is 8.1 after dosing 20 g of baking soda yesterday 75 gal was 7.4', /2\.35/, /above the goal/],
    ['how much acid to lower alk by 2 dkh in 75 gal', /no amounts of/, / g of /],
  ];
  /** Known misses: not read as they are meant, or not offered. */
  const misread: readonly [string, RegExp, RegExp][] = [
    ['is it fine to raise calcium 40 ppm in a day', /Yes: 40 mg\/L/, /Which compound/],
    ['how long can corals go without light', /^Two to three days/, /PAR counts/],
    ['corals no lights for 5 days will they live', /5 days is long/, /no harm\. Two/],
    ['alk 8-8.5 using soda ash doser is that stable', /usual range/, / g of /],
    ['alk 7 to 8, ca 400 to 440, 75 gal, soda ash', /And calcium 400 to 440/, /calcium from/],
    ['alk 7 want 8.5 55g soda ash', /write it as gallons/, /in 208/],
    ['lugols how many drops 50 gal', /no amount/, /189/],
    ['gfo how many grams for po4 0.25 to 0.05 100 gal', /no amount/, /water change alone/],
    // The tank is taken for a nitrate of 55 mg/L.
    ['20% wc on my 55, 10 20% changes ok', /^55 in which unit/, /nitrate from 55|55 changes/],
    // Taken for equipment: the card of old lamps is not among what is offered.
    [
      'how often do lights need replacing',
      /Change T5 tubes after 9 to 14 months|Changing tubes/,
      /PAR counts/,
    ],
    // 8 is taken for the rise; only asked whether that is meant.
    ['raise alk 8 in 75 gal soda ash', /what should it be/, /usual range/],
    // The rise is taken for a pH of 0.2.
    ['how much buffer to raise ph .2', /Nothing is dosed for pH/, /hard to believe|Urgent/],
    // Told where it comes from; the way back up, with salt water, is on a button only.
    ['salinity fell from 1.026 to 1.022 55 gal', /for salt water of/, /for fresh/],
    // Asked back what 1 dKH is.
    [
      '10 ml of my alk mix moved 200l by 0.2 dkh how much for 1 dkh',
      /^Which powder or solution is it/,
      /Which compound/,
    ],
  ];

  it.each(read)('%s', (question, says, never) => {
    expect(faultsIn(question, { values: [], says: [says], never: [never] })).toEqual([]);
  });

  it.fails.each(misread)('%s', (question, says, never) => {
    expect(faultsIn(question, { values: [], says: [says], never: [never] })).toEqual([]);
  });

  /** 1 dKH in 340.7 L: 10.2 g of NaHCO3, 6.4 g of Na2CO3. */
  it('tells of a steady fall where it comes from, and what to put back each day', () => {
    const [first, ...behind] = reached('alk keeps dropping 1 dkh a day 90 gal', { nowMs: 0 });
    expect(first?.headline).toMatch(/^Alkalinity that falls is mostly use/);
    expect(behind.map(({ headline }) => headline)).toContainEqual(
      expect.stringMatching(
        /^To replace 1 dKH .*: 10\.2 g of sodium bicarbonate a day, or 6\.4 g of sodium carbonate a day/,
      ),
    );
  });
});
