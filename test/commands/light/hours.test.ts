import { describe, expect, it } from 'vitest';
import { ask, adviceOf, value, verdict } from './asked.ts';
import { textOf, problemOf } from '../text.ts';

describe('/light hours', () => {
  it('compares the days two articles disagree on, and says what is usual', () => {
    const given = ask('hours', { reading: '200 par' });
    expect(given.headline).toContain('8 to 10 h of main light');
    expect(given.headline).toContain('10 to 12 h with the ramps');
    expect(value(given, '6 h')).toContain('4.3 mol/m² a day');
    expect(value(given, '8 h')).toContain('5.8 mol/m² a day');
    expect(value(given, '12 h')).toContain('8.6 mol/m² a day');
    expect(value(given, '16 h')).toContain('11.5 mol/m² a day');
    expect(value(given, '8 h with ramps')).toContain('6.5 mol/m² a day');
    expect(value(given, '12 h with the total of 8 h')).toContain('133 PAR');
    const text = textOf(given);
    for (const said of [
      'dark',
      'half an hour a week',
      'algae',
      'poorly known',
      'a linear ramp counts half',
    ]) {
      expect(text).toContain(said);
    }
  });

  it('never recommends 16 h, nor the mean of the two articles', () => {
    const given = ask('hours', { reading: '200 PAR' });
    expect(verdict(given, '16 h')).toBe('too long');
    expect(adviceOf(given)).not.toMatch(/\b1[3-9] h|\b2\d h/);
    const wanted = ask('hours', { reading: '200 PAR', hours: '8', goal: '16' });
    expect(wanted.headline).toMatch(/^Do not run 16 h/);
    expect(wanted.steps.join(' ')).not.toContain('16 h');
    expect(wanted.next).toEqual([]);
  });

  it('cuts the peak to 133 PAR when 8 h become 12', () => {
    const given = ask('hours', { reading: '200 PAR', hours: '8 h', goal: '12 h' });
    expect(given.headline).toBe(
      // 133 x 12 x 0.0036 = 5.75, 200 x 8 x 0.0036 = 5.76, by hand: both totals are those of the numbers beside them.
      'Set the peak to 133 PAR: 12 h then gives 5.7 mol/m² a day, about the 5.8 mol/m² a day of 8 h at 200 PAR.',
    );
    expect(given.steps[0]).toContain('lower the peak first');
  });

  it('counts ramps half on both sides of a change', () => {
    const given = ask('hours', { reading: '200 PAR', hours: '8 h', ramp: '60 min', goal: '10 h' });
    // 200 x (8 + 1) / (10 + 1) = 163.6, by hand.
    expect(given.headline).toContain('Set the peak to 164 PAR');
    expect(given.headline).toContain('6.5 mol/m² a day');
  });

  it('gives the hours for a brighter peak, and asks to go there slowly', () => {
    const given = ask('hours', { reading: '200 PAR', hours: '8 h', peak: '240 PAR' });
    expect(given.headline).toContain('Run 6 h 40 min at 240 PAR');
    expect(given.dangers.join(' ')).toContain('raises the peak by 20 %');
    expect(given.next[0]).toMatchObject({
      command: 'light ramp',
      input: { now: '200 PAR', goal: '240 PAR' },
    });
  });

  it('compares two whole days', () => {
    const given = ask('hours', { reading: '200', hours: '8', goal: '10', peak: '240' });
    expect(given.headline).toContain('8.6 mol/m² a day, 50 % more than 8 h at 200 PAR');
    expect(given.dangers.join(' ')).toContain('the daily total by 50 %');
  });

  it('says that 16 h now is too long, and that less needs no ramp', () => {
    const given = ask('hours', { reading: '200 PAR', hours: '16 h' });
    expect(given.headline).toContain('too long: cut it to 10 to 12 h');
    expect(given.steps[0]).toContain('less light needs no ramp');
  });

  it('advises fewer full hours beside long ramps, so that the day stays within 12 h', () => {
    expect(ask('hours', { reading: '200', ramp: '3 h' }).headline).toContain('Run 6 h of main light');
  });

  it('asks for the hours run now rather than assuming them', () => {
    expect(problemOf(() => ask('hours', { reading: '200 PAR', goal: '12 h' })).field).toBe('hours');
  });

  it.each([
    [{ reading: '0 PAR' }, 'reading'],
    [{ reading: '200 PAR', ramp: '7 h' }, 'ramp'],
    [{ reading: '200 PAR', hours: '20 h', ramp: '4 h' }, 'hours'],
    [{ reading: '2000 PAR', hours: '12 h', goal: '2 h' }, 'goal'],
    [{ reading: 'bright' }, 'reading'],
  ] as const)('refuses %o, naming %s', (input, field) => {
    expect(problemOf(() => ask('hours', input)).field).toBe(field);
  });
});
