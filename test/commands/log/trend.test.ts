import { describe, expect, it } from 'vitest';
import { openStore } from '../../../bot/store/open.ts';
import type { Keep, TankProfile } from '../../../commands/keep.ts';
import { trendCommand } from '../../../commands/log/trend.ts';
import type { ParameterId } from '../../../core/water/parameter.ts';
import { problemOf, textOf } from '../text.ts';

const DAY_MS = 86_400_000;
const NOW_MS = Date.UTC(2026, 4, 5, 12);

const profile: TankProfile = {
  name: 'Pantry',
  kind: 'mixed',
  netVolumeL: 300,
  volumeBasis: 'as said',
  units: {},
  targets: {},
};

/** A member with one tank, and a way to log values `daysAgo`. */
function member(extra: Partial<TankProfile> = {}) {
  const keep = openStore({ file: ':memory:', nowMs: () => NOW_MS }).keepFor('100000000000000001');
  const { id } = keep.addTank({ ...profile, ...extra });
  const log = (
    parameter: ParameterId,
    rows: readonly (readonly [daysAgo: number, value: number])[],
  ): void => {
    keep.addEntries(
      id,
      rows.map(([daysAgo, value]) => ({ atMs: NOW_MS - daysAgo * DAY_MS, values: [{ parameter, value }] })),
    );
  };
  const dose = (rise: number, daysAgo: number): void => {
    keep.addAddition(id, { atMs: NOW_MS - daysAgo * DAY_MS, parameter: 'alkalinity', rise });
  };
  return { keep, log, dose };
}

function trend(keep: Keep | undefined, input: Record<string, string> = {}, zone = 'UTC') {
  return trendCommand.run(input, { nowMs: NOW_MS, zone, ...(keep === undefined ? {} : { keep }) });
}

/** 0.1 dKH a day down, from 9 dKH twenty days ago, tested each second day. */
const FALL = Array.from({ length: 11 }, (_, i) => [20 - 2 * i, 9 - 0.2 * i] as const);

describe('/log trend', () => {
  it('is for the member alone', () => {
    expect(trendCommand.private).toBe(true);
    expect(problemOf(() => trend(undefined)).field).toBe('tank');
  });

  it('a steady fall: slope a week, the target, the days to its edge, and a picture that says so', () => {
    const { keep, log } = member();
    log('alkalinity', FALL);
    const given = trend(keep, { of: 'alk' });
    expect(given.headline).toMatch(/^Alkalinity is falling by 0\.70 dKH a week \(0\.60 to 0\.81\)\.$/);
    // The kit leaves 0.3 dKH over 20 days, 0.105 a week: 0.595 to 0.805. The scatter is nothing.
    expect(given.facts[0]).toMatchObject({ label: 'Alkalinity', verdict: 'in target' });
    expect(given.facts[1]).toEqual({
      label: 'Alkalinity used',
      value: '0.100 dKH a day (0.085 to 0.115), no addition counted',
    });
    // 7.0 dKH now is the edge of the target 7 to 11 itself.
    expect(given.facts[2]).toEqual({
      label: 'Alkalinity at this pace',
      value: 'leaves its target at 7 dKH now',
    });
    expect(given.pictures?.[0]?.name).toBe('trend');
    expect(given.pictures?.[0]?.svg).toContain('falling 0.70 a week');
    expect(given.pictures?.[0]?.alt).toContain(
      '11 readings, 15 Apr to 5 May 2026; 7 to 9, latest 7; falling 0.70 a week',
    );
    expect(given.sources).toEqual(['sen68', 'practice']);
  });

  it('straight gives the same line where there is no scatter', () => {
    const { keep, log } = member();
    log('alkalinity', FALL);
    const given = trend(keep, { of: 'alk', method: 'straight' });
    expect(given.headline).toContain('falling by 0.70 dKH a week (0.60 to 0.81)');
    expect(given.working[0]).toContain('9 degrees of freedom');
    expect(given.sources).toEqual(['nist', 'practice']);
  });

  it('days to the edge of the target, by the range of the slope', () => {
    const { keep, log } = member({ targets: { alkalinity: [6, 10] } });
    log('alkalinity', FALL);
    // 1 dKH away at 0.085 to 0.115 dKH a day: 8.7 to 11.8 days.
    expect(textOf(trend(keep, { of: 'alk' }))).toContain('leaves its target at 6 dKH in 8.7 to 12 days');
  });

  it('adds back what was added: steady readings, 0.5 dKH a day in, is 0.5 dKH a day used', () => {
    const { keep, log, dose } = member();
    log(
      'alkalinity',
      [10, 8, 6, 4, 2, 0].map((daysAgo) => [daysAgo, 8] as const),
    );
    for (let day = 10; day > 0; day--) dose(0.5, day);
    const text = textOf(trend(keep, { of: 'alk' }));
    expect(text).toContain('No trend beyond error in alkalinity: −0.03 to +0.03 dKH a day.');
    expect(text).toContain('Alkalinity used: 0.50 dKH a day (0.47 to 0.53), 10 additions counted');
  });

  it('warns of a fast move, of a sudden use, and that it only sees what is logged', () => {
    const { keep, log } = member();
    log('alkalinity', [
      [16, 9.4],
      [14, 9.2],
      [12, 9],
      [10, 8.8],
      [8, 8.6],
      [6, 8.4],
      [4, 8.2],
      [3, 6.2],
    ]);
    const given = trend(keep, { of: 'alk' });
    expect(given.dangers.join('\n')).toMatch(/alkalinity fell by 2 dKH in 24 hours .*usual 1 dKH a day/);
    const cautions = given.cautions.join('\n');
    expect(cautions).toContain(
      'The use of alkalinity went up: 2 dKH a day in the last interval, where 0.1 dKH',
    );
    expect(cautions).toContain('I only see what is logged');
    const { pictures: [picture] = [], steps } = trend(keep, { of: 'alk' });
    expect(picture?.svg).toContain('>moved fast<');
    expect(picture?.alt).toContain('fell by 2 dKH');
    expect(steps[0]).toContain('Test again');
  });

  it('rings the newest fast moves only, and counts them all', () => {
    const { keep, log } = member();
    log(
      'alkalinity',
      Array.from({ length: 20 }, (_, i) => [20 - i, i % 2 === 0 ? 8 : 10] as const),
    );
    const { cautions, pictures: [picture] = [] } = trend(keep, { of: 'alk' });
    expect(cautions.join('\n')).toContain(
      'moved that fast 19 times in this span; the picture rings the last 12',
    );
    // One ring more explains the mark.
    expect(picture?.svg.match(/<circle[^>]*fill="none"/g)).toHaveLength(12 + 1);
  });

  it('a rise that is too fast warns as well', () => {
    const { keep, log } = member();
    log('temperature', [
      [3, 25],
      [2, 25],
      [1, 28.5],
    ]);
    expect(trend(keep, { of: 'temp' }).dangers[0]).toMatch(/temperature rose by 3\.5 °C/);
  });

  it('a reading nobody should believe is doubted, does not alarm, and hardly moves the robust line', () => {
    const { keep, log } = member();
    log(
      'alkalinity',
      FALL.map(([daysAgo, value]) => [daysAgo, daysAgo === 8 ? 82 : value] as const),
    );
    const given = trend(keep, { of: 'alk' });
    expect(given.headline).toMatch(/falling by 0\.7\d* dKH a week/);
    expect(given.cautions).toHaveLength(2);
    expect(given.cautions[1]).toMatch(/^I only see what is logged/);
    expect(given.cautions[0]).toContain('cannot be believed (the last: 82 dKH)');
  });

  it('without `of` takes what is logged of the usual four', () => {
    const { keep, log } = member();
    log('calcium', [
      [9, 430],
      [0, 431],
    ]);
    log('magnesium', [
      [9, 1300],
      [0, 1310],
    ]);
    log('nitrate', [
      [9, 4],
      [0, 12],
    ]);
    const given = trend(keep);
    expect(given.facts.map(({ label }) => label)).toEqual([
      'Calcium',
      'Calcium used',
      'Nitrate',
      'Nitrate at this pace',
    ]);
    expect(given.headline).toMatch(/^Nitrate is rising by .*; no trend beyond error in calcium: /);
    expect(given.working[0]).toContain('too few readings for a range by their scatter');
    expect(given.steps.at(-1)).toContain('five readings');
  });

  it.each([
    'alk, ca',
    'alk and ca',
    'alk ca',
    'Alkalinity; calcium',
    'carbonate hardness + calc',
    'alk, ca, alk',
  ])('reads "%s" as two', (of) => {
    const { keep, log } = member();
    log('alkalinity', FALL);
    log('calcium', [
      [9, 430],
      [0, 431],
    ]);
    expect(trend(keep, { of }).pictures?.[0]?.alt).toMatch(/ Alkalinity, dKH: .* Calcium, mg\/L: /);
    expect(trend(keep, { of }).pictures?.[0]?.svg.match(/<clipPath/g)).toHaveLength(2);
  });

  it.each([
    { what: 'nothing logged', rows: [] },
    { what: 'one reading', rows: [[3, 8]] },
    {
      what: 'two of one moment',
      rows: [
        [3, 8],
        [3, 8.1],
      ],
    },
    {
      what: 'one of the two too long ago',
      rows: [
        [200, 8],
        [3, 8],
      ],
    },
  ] as const)('$what: a friendly answer without a picture', ({ rows }) => {
    const { keep, log } = member();
    log('alkalinity', rows);
    const given = trend(keep, { of: 'alk' });
    expect(given.headline).toMatch(/^No trend yet: it takes two readings/);
    expect(given.pictures?.[0]).toBeUndefined();
    expect(given.steps.join(' ')).toContain('/log add');
  });

  it('looks back as far as asked', () => {
    const { keep, log } = member();
    log('alkalinity', [
      [200, 8],
      [3, 8],
    ]);
    expect(trend(keep, { of: 'alk', over: '365 days' }).pictures?.[0]?.alt).toContain('2 readings');
  });

  it('shows the unit the member prefers', () => {
    const { keep, log } = member({ units: { alkalinity: 'meq/L' } });
    log('alkalinity', FALL);
    const given = trend(keep, { of: 'alk' });
    // 0.7 dKH / 2.804 = 0.250 meq/L.
    expect(given.headline).toContain('falling by 0.25 meq/L a week');
    expect(given.pictures?.[0]?.alt).toContain('target 2.5 to 3.92');
  });

  it('takes the newest 400 readings and says so', () => {
    const { keep, log } = member();
    log(
      'ph',
      Array.from({ length: 450 }, (_, i) => [45 - i / 10, 8 + (i % 3) / 10] as const),
    );
    const given = trend(keep, { of: 'ph' });
    expect(given.read.join(' ')).toContain('the newest 400 readings');
    expect(given.pictures?.[0]?.alt).toContain('400 readings');
  });

  it.each([
    { input: { of: 'unicorn' }, field: 'of' },
    { input: { of: 'alk ca mg no3 po4 temp ph' }, field: 'of' },
    { input: { of: ',' }, field: 'of' },
    { input: { over: '5000 days' }, field: 'over' },
    { input: { over: '1 hour' }, field: 'over' },
    { input: { tank: 'Nowhere' }, field: 'tank' },
    { input: { method: 'magic' }, field: 'method' },
  ])('asks back for $input', ({ input, field }) => {
    const { keep } = member();
    expect(problemOf(() => trend(keep, input)).field).toBe(field);
  });
});
