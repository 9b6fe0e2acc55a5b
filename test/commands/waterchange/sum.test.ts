import { describe, expect, it } from 'vitest';
import { waterchangeCommands } from '../../../commands/waterchange.ts';
import { problemOf, runner, textOf } from '../text.ts';
import { sumCommand } from '../../../commands/waterchange/sum.ts';
import { runWithDefaults } from '../../../commands/defaults.ts';

const sum = runner(waterchangeCommands);
const run = (input: Readonly<Record<string, string | number>>) =>
  runWithDefaults(sumCommand, input, { nowMs: 0 });

// Well-mixed dilution: after n changes of share f, (1 - f)^n is left. 0.8^4 = 0.4096, 0.75^2 = 0.5625, 0.9^7 = 0.4783.
describe('/waterchange sum', () => {
  it.each([
    [{ share: '20 %', times: 4 }, /^4 changes of 20 % replace 59 % of the old water\.$/],
    [{ share: '20 %', times: 4, single: '80 %' }, /^Not the same: .* one of 80 % replaces 80 %\.$/],
    [{ share: '25 %', times: 2, single: '44 %' }, /^About the same: 2 changes of 25 % replace 43\.8 %/],
    [{ share: '10 %', single: '50 %' }, /^7 changes of 10 % do what one of 50 % does: they replace 52\.2 %/],
    [{ share: '10 %', times: 1 }, /^1 change of 10 % replaces 10 %/],
  ])('%o', (input, headline) => expect(run(input).headline).toMatch(headline));

  it('says what is poured, and warns of more than half at once', () => {
    const text = textOf(run({ share: '10 %', single: '60 %', volume: '100 L' }));
    // 0.9^9 = 0.387.
    expect(text).toMatch(/10 L each, 90 L in all/);
    expect(text).toMatch(/more than about half/);
    expect(text).toMatch(/shares do not add up/);
  });

  it.each([
    [{ share: '20 %' }, 'times'],
    [{ share: '20 %', single: '100 %' }, 'single'],
    [{ share: '0 %', times: 3 }, 'share'],
    [{ share: '20 %', times: 101 }, 'times'],
  ])('asks about %o', (input, field) => expect(problemOf(() => run(input)).field).toBe(field));

  it('asks back what 0.2 is', () =>
    expect(problemOf(() => sum('sum', { share: '0.2' })).choices).toEqual(['20 %', '0.2 %']));
});
