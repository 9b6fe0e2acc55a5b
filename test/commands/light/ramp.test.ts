import { describe, expect, it } from 'vitest';
import { ask, value } from './asked.ts';
import { textOf, problemOf } from '../text.ts';

describe('/light ramp', () => {
  it('raises week by week, with the signs of too much and what to do', () => {
    const given = ask('ramp', { now: '100 PAR', goal: '150' });
    expect(given.headline).toContain('from 100 PAR to 150 PAR in 5 weekly steps');
    expect([1, 2, 3, 4, 5].map((week) => value(given, `week ${week}`))).toEqual([
      '110 PAR',
      '121 PAR',
      '133 PAR',
      '146 PAR',
      '150 PAR',
    ]);
    const text = textOf(given);
    for (const said of [
      'bleaching',
      'commoner harm',
      'go back to the last setting',
      '3 to 4 weeks',
      'common practice',
    ]) {
      expect(text).toContain(said);
    }
  });

  it('takes lamp settings too, a bare number following the other', () => {
    const given = ask('ramp', { now: '40 %', goal: '60' });
    expect(given.headline).toContain('from 40 % to 60 %');
    expect(value(given, 'week 1')).toBe('44 %');
    expect(textOf(given)).not.toContain(' PAR now');
  });

  it('never goes from the sand to the top in one go', () => {
    const given = ask('ramp', { now: '60 PAR', goal: '250 PAR' });
    expect(given.headline).toContain('16 weekly steps');
    expect(value(given, 'week 1')).toBe('66 PAR');
    expect(given.cautions.join(' ')).toContain('Usual for large-polyp stony corals: 50 to 180 PAR');
  });

  it('lowers at once', () => {
    const given = ask('ramp', { now: '250 PAR', goal: '100 PAR' });
    expect(given.headline).toBe('Lower it from 250 PAR to 100 PAR today: less light needs no ramp.');
  });

  it('changes nothing where nothing is to change', () => {
    expect(ask('ramp', { now: '100', goal: '100' }).headline).toContain('change nothing');
  });

  it('says when a plan is longer than half a year, and lists no more than that', () => {
    const given = ask('ramp', { now: '10 PAR', goal: '200 PAR' });
    expect(given.headline).toContain('34 weekly steps');
    expect(given.headline).toContain('more than half a year');
    expect(value(given, 'week 26')).toBeDefined();
    expect(value(given, 'week 27')).toBeUndefined();
  });

  it('says that a faster pace is faster than usual', () => {
    expect(ask('ramp', { now: '100', goal: '150', pace: '15 %' }).dangers.join(' ')).toContain(
      'faster than the usual 10 %',
    );
  });

  it.each([
    [{ now: '40 %', goal: '150 PAR' }, 'goal'],
    [{ now: '0 %', goal: '50 %' }, 'now'],
    [{ now: '100 PAR', goal: '0 PAR' }, 'goal'],
    [{ now: '100 PAR', goal: '150 PAR', pace: '50 %' }, 'pace'],
  ] as const)('refuses %o, naming %s', (input, field) => {
    expect(problemOf(() => ask('ramp', input)).field).toBe(field);
  });
});
