import { describe, expect, it } from 'vitest';
import { withDefaults } from '../../../commands/defaults.ts';
import { amountCommand } from '../../../commands/dose/amount.ts';
import { useCommand } from '../../../commands/dose/use.ts';
import { addCommand } from '../../../commands/log/add.ts';
import { logDoseCommand } from '../../../commands/log/dose.ts';
import { problemOf, textOf } from '../text.ts';
import { factOf, member } from '../log/member.ts';

/** A tank tested every two days, losing `uses` dKH a day in turn and dosed back up by rises that are logged. */
function tested(uses: readonly number[]) {
  const one = member();
  one.run(addCommand, { readings: 'kh 8.5' });
  for (const perDay of uses) {
    one.run(logDoseCommand, { of: 'kh', rise: '0.8 dKH' });
    one.wait(2);
    one.run(addCommand, { readings: `kh ${(8.5 + 0.8 - 2 * perDay).toFixed(2)}` });
    one.run(logDoseCommand, { of: 'kh', rise: `${(2 * perDay - 0.8 + 1e-9).toFixed(2)} dKH`, at: 'now' });
    one.run(addCommand, { readings: 'kh 8.5', note: 'after the dose' });
  }
  return one;
}

// The sum is (before - now + added) / days; soda ash by IUPAC 2021 weights: 1.890 g per dKH per 100 L.
describe('/dose use from the log', () => {
  it('9.3 then 7.5 two days later in 150 gal: 0.9 dKH a day, and 19.3 g of soda ash for 1.8 dKH', () => {
    const { run, wait } = member();
    run(addCommand, { readings: 'kh 9.3' });
    wait(2);
    run(addCommand, { readings: 'kh 7.5' });
    const answer = run(useCommand, { of: 'kh' });
    expect(answer.headline).toBe(
      'The tank uses about 0.9 dKH of alkalinity a day (0.75 to 1.05 dKH a day, by the kit’s own error).',
    );
    expect(factOf(answer, 'sodium carbonate a day')).toBe('9.6 g in 567.8 L');
    expect(answer.read.join('\n')).toContain(
      '9.3 dKH at 2026-01-03 12:00, then 7.5 dKH at 2026-01-05 12:00, 2 days apart',
    );
    expect(textOf(answer)).toContain('I only see what is logged');
    const dose = run(amountCommand, { of: 'kh', now: '7.5', goal: '9.3', with: 'soda ash' });
    expect(dose.headline).toMatch(/^19\.3 g of sodium carbonate/);
  });

  // 20 g of NaHCO3 in 567.8 L is 1.176 dKH (11.9039 meq/g): (8.3 - 8.2 + 1.176) / 4 = 0.319 a day.
  it('adds back what was dosed in between, and not what was dosed before or after', () => {
    const { run, wait } = member();
    run(logDoseCommand, { with: 'baking soda', amount: '50 g', at: '1 day ago' });
    run(addCommand, { readings: 'kh 8.3' });
    wait(1);
    run(logDoseCommand, { with: 'baking soda', amount: '20 g' });
    wait(3);
    run(addCommand, { readings: 'kh 8.2' });
    wait(0.1);
    run(logDoseCommand, { with: 'baking soda', amount: '50 g' });
    const answer = run(useCommand, { of: 'alk' });
    expect(answer.headline).toContain('about 0.32 dKH of alkalinity a day');
    expect(answer.read).toContain('added in between: 1.18 dKH in 1 logged dose');
  });

  it('says when the change is within the test’s error', () => {
    const { run, wait } = member();
    run(addCommand, { readings: 'kh 8.3' });
    wait(2);
    run(addCommand, { readings: 'kh 8.2' });
    const answer = run(useCommand, { of: 'kh' });
    expect(answer.headline).toMatch(/within the kit’s error/);
    expect(answer.facts).toEqual([]);
  });

  it('is the median slope of all readings, which bears a wild one', () => {
    const { run, wait } = member();
    for (const value of [11, 9, 8.6, 8.3, 8.0]) {
      run(addCommand, { readings: `kh ${value}` });
      wait(value === 11 ? 20 : 4);
    }
    // Slopes of the ten pairs, by hand: 0.075 three times, 0.083, 0.0875, 0.094, 0.096, 0.1 three times.
    expect(run(useCommand, { of: 'kh' }).headline).toContain(
      'about 0.091 dKH of alkalinity a day (0.075 to 0.1',
    );
  });

  it('flags a use that suddenly changes: one wrong reading looks the same, so the use stays that of all', () => {
    const steady = tested([0.5, 0.5, 0.5, 0.5, 0.5, 0.5]).run(useCommand, { of: 'kh' });
    expect(textOf(steady)).not.toMatch(/suddenly/);
    const answer = tested([0.5, 0.5, 0.5, 0.5, 0.5, 1.2]).run(useCommand, { of: 'kh' });
    expect(answer.steps[0]).toMatch(
      /^The use of alkalinity went up suddenly: 1.2 dKH a day now, about 0.5 before\./,
    );
    expect(answer.headline).toContain('about 0.5 dKH of alkalinity a day');
  });

  it('warns of a last reading that moved too fast', () => {
    const { run, wait } = member();
    run(addCommand, { readings: 'kh 9.5' });
    wait(1);
    run(addCommand, { readings: 'kh 7.5' });
    expect(run(useCommand, { of: 'kh' }).steps[0]).toMatch(/^alkalinity fell by 2 dKH in 24 hours/);
  });

  it('doubts an impossible reading', () => {
    const { run, wait } = member();
    run(addCommand, { readings: 'ca 700' });
    wait(2);
    run(addCommand, { readings: 'ca 420' });
    expect(run(useCommand, { of: 'ca' }).headline).toMatch(/^Retest first: calcium 700 mg\/L/);
  });

  it.each([
    [{ of: 'kh' }, 'before'],
    [{ of: 'kh', before: '9' }, 'now'],
    [{ of: 'kh', now: '9' }, 'before'],
  ])('%j without enough to go on asks about %s', (input, field) => {
    expect(problemOf(() => member().run(useCommand, input)).field).toBe(field);
    expect(problemOf(() => useCommand.run(input, { nowMs: 0 })).field).toBe(field);
  });

  it.each(['over', 'amount', 'volume'])('refuses %s beside the log', (field) => {
    const { run, wait } = member();
    run(addCommand, { readings: 'kh 9.3' });
    wait(2);
    run(addCommand, { readings: 'kh 7.5' });
    const given = { over: '3 days', amount: '1 dKH', volume: '100 L' }[field];
    expect(problemOf(() => run(useCommand, { of: 'kh', [field]: given })).field).toBe(field);
  });

  it('is for the asker alone when it reads the log', () => {
    const { keep } = member();
    expect(withDefaults(useCommand, { of: 'kh' }, { nowMs: 0, keep }).hidden).toBe(true);
    expect(
      withDefaults(
        useCommand,
        { of: 'kh', before: '9 dKH', now: '8 dKH', volume: '100 L' },
        { nowMs: 0, keep },
      ).hidden,
    ).toBe(false);
  });
});
