import { describe, expect, it } from 'vitest';
import { waterCommands } from '../../../commands/water.ts';
import { problemOf, runner, textOf } from '../text.ts';

const ask = runner(waterCommands);
const until = (input: Record<string, string>) => ask('until', input);
const alk = { of: 'alkalinity', now: '8.4 dKH', use: '0.3 dKH a day' };

// Straight lines by hand; ranges, limits and what a kit can tell are common practice, no source (limits.ts, parameter.ts).
describe('/water until', () => {
  it.each([
    // (8.4 - 7) / 0.3 = 4.67; 0.15 / 0.3 = 0.5 either way.
    [{ ...alk, goal: '7' }, /8\.4 dKH to 7 dKH in about 4\.7 days.*4\.2 days to 5\.2 days/],
    [{ ...alk }, /the end of its usual range, 7 dKH in about 4\.7 days/],
    // (20 - 12) / (4 / 7) = 14.
    [
      { of: 'no3', now: '12 ppm', rise: '4 ppm a week', goal: '20 ppm' },
      /12 mg\/L to 20 mg\/L in about 14 days/,
    ],
    // 8.4 - 5 x 0.3.
    [{ ...alk, days: '5 days' }, /^In 5 days alkalinity reads about 6\.9 dKH, below the usual/],
    // 420 - 10 x 2.
    [
      { of: 'ca', now: '420', use: '2 ppm a day', days: '10' },
      /^In 10 days calcium reads about 400 mg\/L, still usual/,
    ],
    [{ of: 'alk', now: '3 meq/L', use: '0.1 meq/L a day', goal: '2.5 meq/L' }, /in about 5 days/],
  ])('%o', (input, headline) => expect(until(input).headline).toMatch(headline));

  it('tells when it turns urgent, and to test on the way', () => {
    const text = textOf(until({ ...alk, goal: '7.5' }));
    // (8.4 - 5) / 0.3 = 11.3; (8.4 - 7) / 0.3.
    expect(text).toMatch(/urgent, at 5 dKH: in about 11\.3 days/);
    expect(text).toMatch(/leaves the usual range, at 7 dKH: in about 4\.7 days/);
    expect(text).toMatch(/half the time, 1\.5 days from now/);
    expect(text).toMatch(/steady pace is a model/);
  });

  it('offers what holds it: a daily dose for a fall, water changes for a climb', () => {
    expect(until(alk).next[0]).toMatchObject({ command: 'dose daily', input: { use: '0.3 dKH a day' } });
    const climb = until({ of: 'nitrate', now: '12 ppm', rise: '4 ppm a week' });
    expect(climb.next[0]).toMatchObject({ command: 'waterchange routine', ask: ['share'] });
  });

  it('does not reckon on what cannot be', () => {
    expect(until({ ...alk, now: '25 dKH' }).headline).toMatch(/^Retest first/);
    expect(until({ ...alk, use: '6 dKH a day' }).headline).toMatch(/^Retest first/);
    expect(until({ ...alk, goal: '9' }).headline).toMatch(/^Never that way/);
    expect(until({ ...alk, goal: '8.3' }).headline).toMatch(/^It is there now/);
    expect(until({ ...alk, use: '0.001 dKH a day', goal: '7' }).headline).toMatch(/^Not within a year/);
    expect(until({ ...alk, days: '60 days' }).headline).toMatch(/8\.4 dKH to 3 dKH in about 18 days/);
    expect(textOf(until({ ...alk, now: '4.5 dKH', goal: '3.5' }))).toMatch(/urgent already/);
  });

  it.each([
    [{ of: 'alkalinity', now: '8 dKH' }, 'use'],
    [{ ...alk, rise: '1 dKH' }, 'rise'],
    [{ of: 'salinity', now: '35', use: '1' }, 'of'],
    [{ of: 'pH', now: '8', use: '0.1' }, 'of'],
    [{ ...alk, use: '-1' }, 'use'],
  ])('asks about %o', (input, field) => expect(problemOf(() => until(input)).field).toBe(field));
});
