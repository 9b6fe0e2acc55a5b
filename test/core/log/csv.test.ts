import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readCsv, writeCsv } from '../../../core/log/csv.ts';

const cellsOf = (text: string) => readCsv(text).records.map(({ cells }) => cells);

// RFC 4180 section 2, rules 1 to 7, with its own examples.
describe('readCsv', () => {
  it.each([
    [
      'aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      'aaa,bbb,ccc\r\nzzz,yyy,xxx',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      '"aaa","bbb","ccc"\r\nzzz,yyy,xxx',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      '"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx',
      [
        ['aaa', 'b\r\nbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    ['"aaa","b""bb","ccc"', [['aaa', 'b"bb', 'ccc']]],
    [
      '\uFEFFa,b\nc,d\r',
      [
        ['a', 'b'],
        ['c', 'd'],
      ],
    ],
    [
      'a,,\n,,b\n',
      [
        ['a', '', ''],
        ['', '', 'b'],
      ],
    ],
    ['a,', [['a', '']]],
    ['', []],
    ['\r\n\r\na\r\n\r\n', [['a']]],
  ])('%j', (text, expected) => expect(cellsOf(text)).toEqual(expected));

  it('knows the line a record begins on', () => {
    expect(readCsv('a\r\n"b\nb"\r\nc').records.map(({ line }) => line)).toEqual([1, 2, 4]);
  });

  it.each([
    ['a\n"b', 2],
    ['a\n"b"c,d', 2],
    ['a\nb"c', 2],
    ['"a\n\nb', 1],
  ])('%j breaks off at line %d', (text, line) => expect(readCsv(text).brokenLine).toBe(line));
});

describe('writeCsv', () => {
  it('puts an apostrophe before what a spreadsheet would run', () => {
    expect(writeCsv([['=1+1', '+1', '-1', '@x', "'=1", "'quoted'", 'a=b']])).toBe(
      "'=1+1,'+1,'-1,'@x,''=1,'quoted',a=b\r\n",
    );
  });

  it('round trips any text', () => {
    const cell = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.string({ unit: fc.constantFrom('"', ',', '\r', '\n', "'", '=', '+', '-', '@', '\t', ' ', 'a') }),
    );
    const row = fc
      .array(cell, { minLength: 1, maxLength: 6 })
      .filter((cells) => cells.length > 1 || cells[0] !== '');
    fc.assert(
      fc.property(fc.array(row, { maxLength: 8 }), (rows) => {
        const read = readCsv(writeCsv(rows));
        expect(read.brokenLine).toBeUndefined();
        expect(read.records.map(({ cells }) => cells)).toEqual(rows);
      }),
      { numRuns: 500 },
    );
  });

  it('writes no cell that begins as a formula', () => {
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom('=', '+', '-', '@', "'", '\t', 'x', '1') }), (text) => {
        expect(writeCsv([[text, '']])).not.toMatch(/^"?[=+\-@\t\r]/);
      }),
    );
  });
});
