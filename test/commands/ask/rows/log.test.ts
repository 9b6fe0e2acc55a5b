import { describe, expect, it } from 'vitest';
import { logRows } from '../../../../commands/ask/rows/log.ts';
import { rowAnswer } from './asked.ts';
import { kept, NOW_MS } from './kept.ts';

const HOUR_MS = 3_600_000;

describe('readings kept in words', () => {
  it.each([
    ['write down kh 7.9 and mag 1290', /^Logged for Reef: alkalinity 7\.9 dKH, magnesium 1290 mg\/L/, 0],
    ['log alk 8.3', /^Logged for Reef: alkalinity 8\.3 dKH/, 0],
    // 21:00 of the day before; the hour of "night" is common practice, no source.
    ['log alk 8.4 from last night', /^Logged for Reef: alkalinity 8\.4/, 19.5],
    ['i tested alk 8.2 this morning, keep it', /^Logged for Reef: alkalinity 8\.2/, 7.5],
    ['log nitrate twelve, a week ago', /^Logged for Reef: nitrate 12 mg\/L/, 7 * 24],
    ['record phosphate 0.06 from yesterday at 9am', /^Logged for Reef: phosphate 0\.06/, 31.5],
    // 1.025 at 25/25 is 33.2 ppt (fm83).
    [
      'save these: ca 420, alk 8, sg 1.025',
      /^Logged for Reef: calcium 420 mg\/L, alkalinity 8 dKH, salinity 33\.2/,
      0,
    ],
  ])('%s', (text, first, hoursAgo) => {
    const { says, keep } = kept(logRows);
    expect(says('log', text)?.headline).toMatch(first);
    expect(keep.lastEntry(1)?.atMs).toBe(NOW_MS - hoursAgo * HOUR_MS);
  });

  it('keeps no wish', () => {
    const { says, keep } = kept(logRows);
    says('log', 'log alk 7.6, i want 8.5');
    expect(keep.latest(1)).toMatchObject([{ parameter: 'alkalinity', value: 7.6 }]);
  });

  it('a dose is kept with what it is worth', () => {
    // 20 g Na2CO3 in 300 L: 20 / (1.8900 g per dKH and 100 L x 3) = 3.53 dKH (iupac21).
    const given = kept(logRows).says('log', 'note that i added 20 g of soda ash last night');
    expect(given?.headline).toMatch(/20 g of sodium carbonate in 300 L, worth 3\.53 dKH/);
  });

  it('shows, follows and takes back', () => {
    const { says, wait } = kept(logRows);
    says('log', 'log alk 8.3');
    wait(7);
    says('log', 'log alk 7.9');
    expect(says('log', 'my alk log')?.headline).toMatch(/the last 2 entries of alkalinity.*7\.9 dKH/);
    // 8.3 to 7.9 dKH within 7 days: 0.4 / 7 = 0.057 a day.
    expect(says('log', 'show me my alk')?.headline).toMatch(/^Alkalinity is falling by 0\.06 dKH a day/);
    expect(says('log', 'how has my alk changed this month')?.headline).toMatch(/alkalinity/i);
    expect(says('log', 'undo that')?.headline).toMatch(/^Taken back .* alkalinity 7\.9 dKH/);
  });

  it('says first what lies beyond a border', () => {
    const { says } = kept(logRows);
    says('log', 'tell me if nitrate goes over 20');
    expect(says('log', 'log no3 25')?.headline).toMatch(
      /^Nitrate 25 mg\/L is over 20 mg\/L, the border you set/,
    );
  });
});

describe('where others read', () => {
  it.each([
    ['log alk 8.2 today', { command: 'log add', input: { readings: 'alkalinity 8.2', at: 'today' } }],
    ['show me my alk trend', { command: 'log trend', input: { of: 'alkalinity' } }],
  ] as const)('a button does it, and nothing is done: %s', (text, button) => {
    const given = rowAnswer(logRows, 'log', text);
    expect(given?.steps[0]).toContain('direct message');
    expect(given?.next[0]).toMatchObject(button);
  });
});
