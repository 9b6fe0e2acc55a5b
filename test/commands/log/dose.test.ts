import { describe, expect, it } from 'vitest';
import { logDoseCommand } from '../../../commands/log/dose.ts';
import { undoCommand } from '../../../commands/log/undo.ts';
import { problemOf } from '../text.ts';
import { member, START_MS } from './member.ts';

// Na2CO3 105.988 g/mol and Ca(OH)2 74.092 g/mol, both 2 eq per mol (IUPAC 2021); 567.8 L; 1 meq/L = 2.804 dKH.
describe('/log dose', () => {
  it('works out the rise in this tank: 19.3 g of soda ash is 1.8 dKH in 150 US gal', () => {
    const { run, keep, tank } = member();
    const answer = run(logDoseCommand, { with: 'soda ash', amount: '19.3 g', at: '2 hours ago' });
    expect(answer.headline).toBe(
      'Logged for Reef: 19.3 g of sodium carbonate in 567.8 L, worth 1.8 dKH of alkalinity.',
    );
    const [dose] = keep.additions(tank.id, {});
    expect(dose).toMatchObject({ compound: 'sodium carbonate', massG: 19.3, parameter: 'alkalinity' });
    expect(dose?.atMs).toBe(START_MS - 2 * 3_600_000);
    expect(Math.abs((dose?.rise ?? 0) / (((19.3 / 105.988) * 2000 * 2.80385) / 567.8118) - 1)).toBeLessThan(
      1e-4,
    );
    expect(answer.dangers[0]).toContain('More than the usual 1 dKH of alkalinity in a day');
  });

  // Ca 40.078: 10 g of Ca(OH)2 bring 269.9 meq and 5.409 g of calcium.
  it('logs everything a compound brings, and takes it back as one dose', () => {
    const { run, keep, tank } = member();
    run(logDoseCommand, { with: 'soda ash', amount: '5 g' });
    const lime = run(logDoseCommand, { with: 'calcium hydroxide', amount: '10 g' });
    expect(lime.headline).toContain('worth 1.33 dKH of alkalinity and 9.53 mg/L of calcium');
    expect(keep.additions(tank.id, {})).toHaveLength(3);
    expect(run(undoCommand, { of: 'dose' }).headline).toBe(
      'Taken back from the log of Reef: 10 g of calcium hydroxide (alkalinity +1.33 dKH, calcium +9.53 mg/L) of 2026-01-03 12:00.',
    );
    expect(keep.additions(tank.id, {}).map(({ compound }) => compound)).toEqual(['sodium carbonate']);
  });

  it('takes back one of two alike doses', () => {
    const { run, keep, tank } = member();
    run(logDoseCommand, { with: 'soda ash', amount: '5 g' });
    run(logDoseCommand, { with: 'soda ash', amount: '5 g' });
    run(undoCommand, { of: 'dose' });
    expect(keep.additions(tank.id, {})).toHaveLength(1);
  });

  it('takes a rise alone where the powder is not known', () => {
    const { run, keep, tank } = member();
    expect(run(logDoseCommand, { of: 'kh', rise: '+0.8' }).headline).toBe(
      'Logged for Reef: a dose for alkalinity, worth 0.8 dKH of alkalinity.',
    );
    expect(keep.additions(tank.id, {})[0]).toMatchObject({ parameter: 'alkalinity', compound: undefined });
  });

  it.each([
    [{}, 'with'],
    [{ of: 'kh' }, 'rise'],
    [{ of: 'kh', rise: '0' }, 'rise'],
    [{ with: 'soda ash' }, 'amount'],
    [{ with: 'calcium chloride', amount: '5 g' }, 'with'],
    [{ with: 'soda ash', amount: '1 tsp' }, 'amount'],
    [{ with: 'soda ash', amount: '0 g' }, 'amount'],
    [{ with: 'soda ash', amount: '5 g', of: 'calcium' }, 'with'],
    [{ with: 'soda ash', amount: '5 g', at: '4/5' }, 'at'],
  ])('%j asks about %s and logs nothing', (input, field) => {
    const { run, keep, tank } = member();
    expect(problemOf(() => run(logDoseCommand, input)).field).toBe(field);
    expect(keep.additions(tank.id, {})).toEqual([]);
  });
});
