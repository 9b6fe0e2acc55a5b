import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MOST_NOTE, MOST_ROWS, readRows, writeRows, type Row } from '../../../core/log/rows.ts';
import { parameterIds } from '../../../core/water/parameter.ts';
import { problemOf } from '../../commands/text.ts';
import { hostileSample } from '../../hostile.ts';

const nowMs = Date.parse('2026-01-07T20:00:00Z');
const HEAD = 'time,parameter,value,unit,note\r\n';
const read = (text: string) => readRows(text, 'file', nowMs);
const why = (row: string) => read(HEAD + row).bad.map((bad) => `${bad.line} ${bad.why}`);

describe('readRows', () => {
  // 10:00+01:00 is 09:00 UTC (ISO 8601); 2.9 meq/L = 8.131 dKH (1 meq/L = 2.804 dKH).
  it('reads any name and unit, and a time with an offset', () => {
    const { rows, bad } = read(
      `${HEAD}2025-12-01T10:00:00+01:00,KH,2.9,meq/L,"a ""note"", yes"\r\n2025-12-01T10:00Z,sg,1.025,SG,\r\n2025-12-01T10:00Z,pH,8.1,,\r\n`,
    );
    expect(bad).toEqual([]);
    expect(rows.map(({ parameter, line }) => `${line} ${parameter}`)).toEqual([
      '2 alkalinity',
      '3 salinity',
      '4 ph',
    ]);
    expect(rows[0]).toMatchObject({ atMs: Date.UTC(2025, 11, 1, 9), note: 'a "note", yes' });
    expect(rows[0]?.value).toBeCloseTo(8.131, 3);
    expect(rows[1]?.value).toBeCloseTo(33.19, 2);
  });

  it.each([
    ['2025-12-01T10:00:00Z,ca,x,mg/L,', '2 the value is not a number; write 8.3'],
    ['2025-12-01T10:00:00Z,ca,"420,5",mg/L,', '2 the value is not a number; write 8.3'],
    [
      '2025-12-01T10:00:00,ca,420,mg/L,',
      '2 the time is not ISO 8601 with Z or an offset, as 2026-01-03T18:00:00Z',
    ],
    [
      '2025-13-01T10:00:00Z,ca,420,mg/L,',
      '2 the time is not ISO 8601 with Z or an offset, as 2026-01-03T18:00:00Z',
    ],
    ['2026-02-01T10:00:00Z,ca,420,mg/L,', '2 the time is in the future'],
    ['1999-02-01T10:00:00Z,ca,420,mg/L,', '2 the time is before 2000'],
    ['2025-12-01T10:00:00Z,boron,4,mg/L,', '2 "boron" is no parameter I know'],
    ['2025-12-01T10:00:00Z,ca,420,,', '2 the unit is missing; calcium is in mg/L'],
    ['2025-12-01T10:00:00Z,ca,-1,mg/L,', '2 -1 mg/L is out of range'],
    ['2025-12-01T10:00:00Z,ph,15,,', '2 15 is out of range'],
    ['2025-12-01T10:00:00Z,ca,420', '2 3 cells instead of 5'],
    [
      `2025-12-01T10:00:00Z,ca,420,mg/L,${'x'.repeat(MOST_NOTE + 1)}`,
      '2 the note is longer than 200 letters',
    ],
    [
      '2025-12-01T10:00:00Z,ca,420,mg/L,"open',
      '2 a quote is not closed, or stands inside a field without quotes',
    ],
  ])('%s', (row, reason) => expect(why(row)).toEqual([reason]));

  it('names a unit that does not fit', () => {
    expect(why('2025-12-01T10:00:00Z,ca,420,dKH,')[0]).toMatch(/^2 I could not read that/);
  });

  it('takes no other head, nothing and no more than it says', () => {
    expect(problemOf(() => read('date,parameter,value\n')).limit).toBe('time,parameter,value,unit,note');
    expect(problemOf(() => read(HEAD)).message).toBe('The file has no readings.');
    const line = '2025-12-01T10:00:00Z,ca,420,mg/L,\n';
    expect(read(HEAD + line.repeat(MOST_ROWS)).rows).toHaveLength(MOST_ROWS);
    expect(problemOf(() => read(HEAD + line.repeat(MOST_ROWS + 1))).limit).toBe('at most 20000');
  });

  it('puts every hostile row either in rows or in bad', () => {
    for (const text of hostileSample(5, 1500)) {
      const cells = text.replace(/["\r\n,]/g, ' ');
      for (const row of [
        `2025-12-01T10:00Z,ca,${cells},mg/L,`,
        `${cells},ca,420,mg/L,`,
        `2025-12-01T10:00Z,ca,420,${cells},`,
      ]) {
        const { rows, bad } = read(`${HEAD}${row}\r\n`);
        expect(rows.length + bad.length, row).toBe(1);
        expect(
          rows.every(({ value }) => value >= 0 && value <= 1e6),
          row,
        ).toBe(true);
      }
    }
  });
});

describe('writeRows', () => {
  const row: fc.Arbitrary<Row> = fc.record({
    atMs: fc.integer({ min: Date.UTC(2000, 0, 1), max: nowMs }),
    parameter: fc.constantFrom(...parameterIds),
    value: fc.double({ min: 0, max: 14, noNaN: true }).map((value) => value + 0),
    note: fc.option(fc.string({ unit: 'binary', minLength: 1, maxLength: MOST_NOTE / 2 }), {
      nil: undefined,
    }),
  });

  it('reads back the same to the last digit', () => {
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 20 }), (rows) => {
        const back = read(writeRows(rows));
        expect(back.bad).toEqual([]);
        expect(back.rows).toEqual(rows.map((one, index) => ({ ...one, line: back.rows[index]?.line })));
      }),
      { numRuns: 300 },
    );
  });
});
