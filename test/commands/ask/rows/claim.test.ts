import { describe, expect, it } from 'vitest';
import { lazyReader, loadReader } from '../../../../bot/reader/load.ts';
import { claimRows } from '../../../../commands/ask/rows/claim.ts';
import { particularOf } from '../../../../commands/primer/particular.ts';
import { framesOf } from '../../../../core/language/frame.ts';
import { textOf } from '../../text.ts';

/** What is answered to a message taken as a rule: a sum that judges it, else the card that does. */
const asked = (text: string) => {
  const frame = framesOf(loadReader().read(text)).find(({ kind }) => kind === 'claim');
  const row = claimRows.find(({ kind }) => kind === 'claim');
  if (frame === undefined || row === undefined) return undefined;
  const card = row.computes?.(frame) === true ? undefined : particularOf(frame);
  return card ?? row.answer(frame, { nowMs: 0, keep: undefined, reader: lazyReader });
};

/** Figures as in test/core/claims/rules.ts: weights IUPAC 2021, EOS-80, mass balance; "practice" is common practice, no source. */
const rules: readonly (readonly [string, RegExp])[] = [
  // 1 - 0.85^3 = 0.3859.
  ['a mate told me three 15% changes swap out 45% of the water, true?', /^Wrong: .*38\.6 %/],
  // 105.99 / 2 against 84.01 g per equivalent: 1.585.
  ['heard that sodium carbonate is double the strength of sodium bicarbonate', /^Wrong: .*1\.585 times/],
  // 1.02637 at 35 ppt, 25 / 25 °C.
  ['somebody at the club claims 35 ppt equals 1.026', /^Right: .*1\.0264/],
  // Practice.
  ['they say you can raise calcium 100 ppm a day without trouble', /^Wrong: .*25 to 50 mg\/L/],
  // 100.086 / 56.077 x 10 = 17.848.
  ['is it true 1 dKH is about 18 ppm', /^Right: .*17\.85 ppm/],
  // A cup of 230 to 310 g (practice) in 3.785 L.
  ['read online that a cup of salt per gallon makes seawater', /^Wrong: .*55 to 80 ppt/],
  // 0.0203 mol/L (Bates 1956), twice the charge.
  ['video said kalkwasser can never be overdosed', /^Wrong: .*41 meq\/L/],
  // 1.02334 x 3.785412 kg = 8.54 lb.
  ['is it true that a gallon of seawater weighs ten pounds', /^Wrong: .*8\.54 lb/],
  // 4.54609 L.
  ['supposedly one imperial gallon is 3.8 litres', /^Wrong: 1 imp gal is 4\.546 L/],
  // 40.078 / 2 = 20.04 mg per meq.
  ['heard that for every meq you use you need 20 ppm of calcium', /^Right: .*20 mg\/L/],
  // 300 x 9 x 0.0036 = 9.72.
  ['someone says 300 par for 9 hours is the same as 450 par for 6 hours', /^Roughly right: .*9\.72/],
  // 25 x 0.6 = 15.
  ['they told me a 40 % water change gets nitrate from 25 to 15, is that so?', /^Right: .*25 to 15/],
  // 16 x 62.004 / 94.97 = 10.45.
  ['friend says nitrate and phosphate should be 100:1', /^Wrong: .*10\.4 : 1/],
  // 1 tsp 4 to 5 g (practice) / (2.9961 g per dKH and 100 L x 1.8927) = 0.705 to 0.882.
  [
    'lfs guy swears a teaspoon of bicarb in fifty gallons lifts kh one degree, mine is at 7.2',
    /^Roughly right: .*0\.71 to 0\.88 dKH/,
  ],
  // Practice.
  ['someone told me to run 30 times turnover for acros', /^It depends: .*40 or more/],
  ['rule of thumb: 5 watts a gallon for corals', /^It depends: there is no right figure/],
];

describe('a rule somebody passed on', () => {
  it.each(rules)('%s', (text, first) => expect(asked(text)?.headline).toMatch(first));

  it('is shown on the asker’s own water, which is no part of the rule', () => {
    const given = asked('my friend says 4 changes of 20 % replace 80 %, i have a 400 L tank');
    expect(given?.headline).toMatch(/59 %/);
    if (given !== undefined) expect(textOf(given)).toMatch(/236\.2 L of old water where 320 L/);
  });

  it('keeps the caution of its substance', () =>
    expect(asked('a mate told me 2 tsp of kalk per gallon')?.dangers.join(' ')).toMatch(/caustic/));

  it.each(['copper at 0.5 ppm cures ich, is that true', 'they say 5 mg of erythromycin per gallon'])(
    'is not judged where it is of a medicine: %s',
    (text) => expect(asked(text)?.headline).toMatch(/never give a dose/),
  );

  it.each([
    'they say you lose 12 corals for every tank crash',
    'is it true that 2 tsp of calcium chloride in 50 gallons adds 20 ppm of calcium',
  ])('is said not to be known where its numbers make no sum: %s', (text) => {
    const given = asked(text);
    expect(given?.headline).toMatch(/^I do not know that rule/);
    expect(given?.next.length).toBeGreaterThan(5);
  });

  it.each([
    [
      'my biology teacher says touching any zoa can kill you. true or is he doing the most',
      /^Rarely: .*gloves, goggles/,
    ],
    ['guy told us 1 penny kills everything within a day. legend or true', /^Half true: one coin/],
    ['is it true dead fish poison everybody', /^Overstated for a snail or small fish/],
    [
      'they say a dying sea cucumber nukes the lot. real?',
      /^Overstated.*true enough for a big anemone, cucumber/,
    ],
    [
      'Fella at the mart reckons you never need change water so long as alk stops at 8. Sounds like bull to me',
      /^Habit, no law/,
    ],
    ['is one inch of fish per gallon right', /^No law: length/],
    ['do you have to wait a year before any coral, true?', /^No law: steady tests/],
    ['somebody said a tingle from the outlet is normal by a salt tank', /^Not normal, ever/],
    ['heard boiling live rock can put you in hospital, fact?', /^True: people in the room/],
  ])('what is often passed on has its verdict (common practice, no source): %s', (text, known) => {
    const given = asked(text);
    expect(given?.headline).toMatch(known);
    expect(given?.read.join()).toMatch(/^as Rule: /);
  });

  it.fails.each([
    ['they all say palys kill you if you so much as touch one, fact?', /^Rarely/],
    ['a mate read that a copper coin in the sump keeps fish healthy, nonsense?', /^Half true: one coin/],
    ['is it true a dead crab kills the tank', /^Overstated/],
    [
      'fella on the market reckons you never change water again if youve enough mangroves. bollocks?',
      /^Habit, no law/,
    ],
  ])('misread: %s', (text, known) => expect(asked(text)?.headline).toMatch(known));

  it.fails('misread: is answered from the card of its subject', () =>
    expect(asked('someone said you must never top off with tap water, myth?')?.headline).toMatch(
      /Not untreated/,
    ),
  );

  it.each([['is it true that hammers and torches can touch', /hammer/i]])(
    'is answered from the card of its subject where nothing judges it: %s',
    (text, known) => {
      const given = asked(text);
      expect(given?.headline).toMatch(/^I do not know that rule. On its subject: /);
      expect(`${given?.headline} ${given?.facts[0]?.value}`).toMatch(known);
    },
  );

  it('says that it does not know what it has nothing on', () =>
    expect(asked('an old boy told me corals can hear. taking the mick?')?.headline).toMatch(
      /^I do not know that rule, so I cannot say/,
    ));
});
