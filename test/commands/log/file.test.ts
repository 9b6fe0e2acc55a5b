import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addCommand } from '../../../commands/log/add.ts';
import { exportCommand } from '../../../commands/log/export.ts';
import { importCommand } from '../../../commands/log/import.ts';
import type { NewEntry } from '../../../commands/keep.ts';
import { parameterIds } from '../../../core/water/parameter.ts';
import { problemOf } from '../text.ts';
import { member, START_MS, type Member } from './member.ts';

const HEAD = 'time,parameter,value,unit,note\r\n';

function take(one: Member, text: string) {
  return one.run(importCommand, { file: { name: 'readings.csv', text } });
}

/** What is logged, in an order that does not depend on how it got there. */
function logOf({ keep, tank }: Member): string[] {
  return keep
    .readings(tank.id, {})
    .map((reading) => JSON.stringify(reading))
    .sort();
}

describe('/log import', () => {
  it('logs all rows and says from when to when', () => {
    const one = member();
    const answer = take(
      one,
      `${HEAD}2025-12-01T10:00:00Z,kh,2.9,meq/L,"a ""note"""\r\n2025-12-03T10:00:00Z,Calcium,420,mg/L,\r\n`,
    );
    expect(answer.headline).toBe('2 readings of readings.csv logged for Reef.');
    expect(answer.read).toEqual([
      'from 2025-12-01 04:00 to 2025-12-03 04:00 (times by the clock of America/Chicago)',
    ]);
    expect(logOf(one)).toHaveLength(2);
  });

  it('logs nothing of a file with a bad line, and names the line', () => {
    const one = member();
    const problem = problemOf(() =>
      take(
        one,
        `${HEAD}2025-12-01T10:00:00Z,kh,8,dKH,\r\n2025-12-01T10:00:00Z,kh,8;1,dKH,\r\nx,ca,420,mg/L,\r\n`,
      ),
    );
    expect(problem.message).toBe('2 lines of the file are not right, so nothing of it is logged.');
    expect(problem.hint).toMatch(
      /^line 3: the value is not a number; write 8.3; line 4: the time is not ISO 8601/,
    );
    expect(logOf(one)).toEqual([]);
  });

  it('passes over what is there already, and keeps it where the file differs', () => {
    const one = member();
    const rows = `${HEAD}2025-12-01T10:00:00Z,kh,8,dKH,\r\n2025-12-01T10:00:00Z,ca,420,mg/L,\r\n`;
    take(one, rows);
    const before = logOf(one);
    const again = take(one, rows.replace('420', '430'));
    expect(again.headline).toBe(
      '0 readings of readings.csv logged for Reef; 2 readings passed over, because there is one of that time already.',
    );
    expect(again.read).toEqual(['line 3: calcium 430 mg/L differs from 420 mg/L in the log, which stays']);
    expect(logOf(one)).toEqual(before);
  });
});

describe('/log export', () => {
  it('gives a file by the tank’s name', () => {
    const one = member({ name: 'My Reef #1' });
    one.run(addCommand, { readings: 'kh 8.1', note: '=HYPERLINK("x")' });
    const { file, headline } = one.run(exportCommand);
    expect(headline).toBe('1 reading of My Reef #1 in one file, the oldest first.');
    expect(file).toEqual({
      name: 'my-reef-1-readings.csv',
      text: `${HEAD}2026-01-03T18:00:00.000Z,alkalinity,8.1,dKH,"'=HYPERLINK(""x"")"\r\n`,
    });
    expect(member().run(exportCommand).file).toBeUndefined();
  });

  const entry: fc.Arbitrary<NewEntry> = fc.record({
    atMs: fc.integer({ min: Date.UTC(2000, 0, 1), max: START_MS }),
    note: fc.option(fc.string({ unit: 'grapheme', minLength: 1, maxLength: 20 }), { nil: undefined }),
    values: fc.uniqueArray(
      fc.record({
        parameter: fc.constantFrom(...parameterIds),
        value: fc.double({ min: 0, max: 14, noNaN: true }).map((value) => value + 0),
      }),
      { selector: ({ parameter }) => parameter, minLength: 1, maxLength: 5 },
    ),
  });

  it('comes back the same in another tank, two readings of one time included', () => {
    fc.assert(
      fc.property(fc.array(entry, { minLength: 1, maxLength: 6 }), (entries) => {
        const [from, to] = [member(), member()];
        from.keep.addEntries(from.tank.id, [...entries, ...entries.slice(0, 1)]);
        take(to, from.run(exportCommand).file?.text ?? '');
        expect(logOf(to)).toEqual(logOf(from));
      }),
      { numRuns: 40 },
    );
  });
});
