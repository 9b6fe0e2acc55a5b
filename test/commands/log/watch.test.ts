import { describe, expect, it } from 'vitest';
import { addCommand } from '../../../commands/log/add.ts';
import { importCommand } from '../../../commands/log/import.ts';
import { watchCommand } from '../../../commands/log/watch.ts';
import { problemOf } from '../text.ts';
import { member } from './member.ts';

describe('/log watch', () => {
  it('says the border first when a reading is logged beyond it, and only then', () => {
    const { run } = member();
    const set = run(watchCommand, { of: 'nitrate', over: '20' });
    expect(set.headline).toBe('Watched for Reef: nitrate over 20 mg/L.');
    expect(set.steps.join(' ')).toMatch(/only see what is logged/);
    expect(run(addCommand, { readings: 'no3 18' }).headline).toMatch(/^Logged for Reef/);
    expect(run(addCommand, { readings: 'no3 24 alk 8' }).headline).toMatch(
      /^Nitrate 24 mg\/L is over 20 mg\/L, the border you set\. Logged for Reef/,
    );
  });

  it('is told by a file too, of its newest reading', () => {
    const { run } = member();
    run(watchCommand, { of: 'nitrate', over: '20' });
    const text = [
      'time,parameter,value,unit,note',
      '2026-01-01T18:00:00Z,nitrate,30,mg/L,',
      '2026-01-02T18:00:00Z,nitrate,22,mg/L,',
    ].join('\n');
    const { headline } = run(importCommand, { file: { name: 'a.csv', text } });
    expect(headline).toMatch(/^Nitrate 22 mg\/L is over .* 2 readings of a\.csv logged/);
  });

  it('takes both borders, in the units that are typed', () => {
    const { run } = member();
    // 1 meq/L is 2.804 dKH (iupac21); 80 F is 26.67 C.
    run(watchCommand, { of: 'kh', over: '9', under: '2.5 meq/L' });
    run(watchCommand, { of: 'temperature', over: '80 f' });
    const { headline, facts } = run(watchCommand, {});
    expect(headline).toBe('Watched for Reef: alkalinity, temperature.');
    expect(facts.map(({ value }) => value)).toEqual(['over 9 dKH or under 7 dKH', 'over 26.7 °C']);
    expect(run(addCommand, { readings: 'alk 6.8' }).headline).toMatch(/^Alkalinity 6\.8 dKH is under 7 dKH/);
    expect(run(addCommand, { readings: 'temp 27' }).headline).toMatch(/^Temperature 27 °C is over/);
  });

  it('says so at once where the last reading is beyond it already', () => {
    const { run } = member();
    run(addCommand, { readings: 'po4 0.2' });
    expect(run(watchCommand, { of: 'phosphate', over: '0.15' }).facts[0]?.value).toMatch(/^Phosphate 0\.2/);
  });

  it('stops, and asks what is missing', () => {
    const { run, other, tank } = member();
    run(watchCommand, { of: 'nitrate', over: '20' });
    expect(other.watches(tank.id)).toEqual([]);
    expect(run(watchCommand, { of: 'nitrate', stop: 'yes' }).headline).toBe(
      'I no longer watch nitrate for Reef.',
    );
    expect(run(addCommand, { readings: 'no3 40' }).headline).not.toMatch(/border/);
    expect(problemOf(() => run(watchCommand, { of: 'nitrate' })).field).toBe('over');
    expect(problemOf(() => run(watchCommand, { over: '20' })).field).toBe('of');
    expect(problemOf(() => run(watchCommand, { of: 'kh', over: '7', under: '8' })).field).toBe('under');
  });
});
