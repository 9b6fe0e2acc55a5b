import { describe, expect, it } from 'vitest';
import { checkupCommand } from '../../../commands/checkup.ts';
import { amountCommand } from '../../../commands/dose/amount.ts';
import { useCommand } from '../../../commands/dose/use.ts';
import { addCommand } from '../../../commands/log/add.ts';
import { logDoseCommand } from '../../../commands/log/dose.ts';
import { asked } from '../../corpus.ts';
import { textOf } from '../text.ts';
import { factOf, member } from './member.ts';

/**
 * Members' cases with a tank and a log in play. Numbers from first principles: IUPAC 2021 weights (1.890 g Na2CO3 and
 * 2.996 g NaHCO3 per dKH per 100 L), 1 US gal = 3.785411784 L, EOS-80 salinities at 25/25. Practice: no source.
 */
describe('A16: alkalinity fell 9.3 to 7.5 in two days, 150 US gal', () => {
  it('finds the daily use, the amount for the whole rise and that it takes two days', () => {
    const { run, wait } = member();
    run(addCommand, { readings: 'kh 9.3' });
    wait(2);
    const logged = run(addCommand, { readings: 'kh 7.5 ph 8.03' });
    expect(factOf(logged, 'alkalinity')).toContain('−1.8 dKH in 2 days');
    expect(run(useCommand, { of: 'kh' }).headline).toContain('about 0.9 dKH of alkalinity a day');
    const dose = run(amountCommand, { of: 'kh', now: '7.5', goal: '9.3', with: 'soda ash' });
    expect(dose.headline).toMatch(/^19\.3 g of sodium carbonate in all, 9\.7 g on day 1 and 9\.6 g on day 2/);
  });

  it('tells what the friend’s 14 teaspoons would do only after they are weighed', () => {
    const { run } = member();
    expect(() => run(logDoseCommand, { with: 'soda ash', amount: '14 tsp' })).toThrow('in grams');
    expect(run(logDoseCommand, { with: 'soda ash', amount: '75 g' }).dangers[0]).toContain(
      'More than the usual 1 dKH',
    );
  });
});

describe('B09: the top-off overfilled, 1.025 became 1.024', () => {
  it('does not send anybody for salt', () => {
    const { run, wait } = member();
    run(addCommand, { readings: 'sg 1.025' });
    wait(1);
    const logged = run(addCommand, { readings: 'sg 1.024' });
    expect(factOf(logged, 'salinity')).toContain('31.9 ppt, −1.3 ppt in 24 hours');
    expect(textOf(run(checkupCommand))).toMatch(
      /only has to evaporate again\.\nKeep the top-off off and add no salt/,
    );
  });
});

describe('E01: what to test how often, a mixed reef of a year', () => {
  it('gives a table that asks for alkalinity twice a week and not for everything every day', () => {
    const { run } = member({ startedOn: '2025-01-03' });
    const rows = run(checkupCommand, { readings: 'kh 8', plan: true }).table?.rows ?? [];
    expect(rows.map(([test]) => test)).toEqual(
      expect.arrayContaining(['temperature', 'salinity', 'alkalinity', 'calcium', 'magnesium', 'nitrate']),
    );
    expect(rows.filter(([, often]) => /^daily|every day/.test(often ?? '')).map(([test]) => test)).toEqual([
      'temperature',
    ]);
    expect(rows.find(([test]) => test === 'alkalinity')?.[1]).toMatch(/^twice a week/);
  });
});

describe('G: lines as members type them', () => {
  it('G01: logs either order of the triplet and has nothing to correct', () => {
    const one = member();
    const answer = one.run(addCommand, { readings: asked.G01 });
    expect(answer.headline).toMatch(/All of it is where it should be\.$/);
    expect(one.keep.latest(one.tank.id)).toHaveLength(7);
    expect(factOf(answer, 'alkalinity')).toContain('9.5 dKH');
  });

  it('G03: reads 1.024 ppt as a specific gravity and doubts the calcium', () => {
    const answer = member().run(checkupCommand, { readings: asked.G03 });
    expect(answer.headline).toMatch(/^Test calcium again first/);
    expect(factOf(answer, 'salinity')).toContain('31.9 ppt');
    expect(answer.unused).toEqual(['"month old nano"', '"first coral this weekend?"']);
  });

  // 180 mg/L CaCO3 = 3.60 meq/L = 10.1 dKH (50.04 mg per meq).
  it('G05: takes one kit’s ppm as CaCO3 and does not take the mean with the other', () => {
    const answer = member().run(addCommand, { readings: 'alk 180 ppm alk 240 ppm' });
    expect(answer.headline).toContain('alkalinity 10.1 dKH');
    expect(answer.unused).toEqual(['"alk 240 ppm"']);
  });

  // 5.67 g of NaHCO3 is 1 dKH in 50 US gal (189.3 L) and 1.32 in 38 (143.8 L).
  it('G09: works out a dose by the net water of the tank', () => {
    const { run } = member({ netVolumeL: 38 * 3.785411784, displayVolumeL: 50 * 3.785411784 });
    expect(run(logDoseCommand, { with: 'baking soda', amount: '5.67 g' }).headline).toContain(
      'in 143.8 L, worth 1.32 dKH',
    );
  });

  // P 30.974, PO4 94.971: x 3.066.
  it('G12: asks what 18 of phosphate are, and reads ppb of phosphorus as 0.055 mg/L', () => {
    const { run } = member();
    expect(() => run(addCommand, { readings: 'po4 18' })).toThrow('in which unit?');
    expect(run(addCommand, { readings: 'po4 18 ppb P' }).headline).toContain('phosphate 0.055 mg/L');
  });
});
