import { describe, expect, it } from 'vitest';
import { ask } from './asked.ts';
import { textOf, problemOf } from '../text.ts';

describe('/light dim', () => {
  it('gives the setting, rounded down, in weekly steps, to be measured again', () => {
    const given = ask('dim', { reading: '120 PAR', at: '50 %', goal: '150 PAR' });
    expect(given.headline).toContain('about 62 % for 150 PAR, then measure again');
    expect(given.headline).toContain('3 weekly steps, not at once');
    expect(given.working.join(' ')).toContain('62.5 %');
    expect(given.cautions.join(' ')).toContain('not linear');
  });

  it('never sets above 100 %', () => {
    const given = ask('dim', { reading: '120 PAR', at: '50 %', goal: '300 PAR' });
    expect(given.headline).toBe(
      'The lamp cannot do that here: full power gives about 240 PAR, and you want 300 PAR.',
    );
    expect(textOf(given)).not.toContain('125 %');
  });

  it('lowers at once', () => {
    const given = ask('dim', { reading: '120 PAR', at: '50', goal: '60' });
    expect(given.headline).toBe('Set the lamp to about 25 % for 60 PAR, then measure again.');
    expect(given.next).toEqual([]);
  });

  it('warns when the new setting is far from the measured one', () => {
    const given = ask('dim', { reading: '40 PAR', at: '20 %', goal: '150 PAR' });
    expect(given.headline).toContain('75 %');
    expect(given.cautions.join(' ')).toContain('first try only');
  });

  it.each([
    [{ reading: '120 PAR', at: '0 %', goal: '150 PAR' }, 'at'],
    [{ reading: '120 PAR', at: '120 %', goal: '150 PAR' }, 'at'],
    [{ reading: '0', at: '50 %', goal: '150 PAR' }, 'reading'],
    [{ reading: '500 PAR', at: '10 %', goal: '5 PAR' }, 'goal'],
  ] as const)('refuses %o, naming %s', (input, field) => {
    expect(problemOf(() => ask('dim', input)).field).toBe(field);
  });
});
