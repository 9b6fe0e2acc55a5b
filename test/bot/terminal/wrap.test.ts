import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { columns } from '../../../bot/columns.ts';
import { plain, shortened } from '../../../bot/terminal/plain.ts';
import { table } from '../../../bot/terminal/table.ts';
import { list, wrap } from '../../../bot/terminal/wrap.ts';

/** Parts a line may be broken between: a no-break space does not end one. */
function words(whole: string): string[] {
  return whole.split(/[^\S\u00A0\u202F]+/).filter((word) => word !== '');
}

const style = { width: 40, bold: false };

describe('plain', () => {
  it.each([
    ['\u001B[2J\u001B[1;1H', '␛[2J␛[1;1H'],
    ['a\rb\nc\td', 'a b c d'],
    ['bell \u0007 del \u007F', 'bell ␇ del ␡'],
    ['csi \u009B31m', 'csi \uFFFD31m'],
    ['ab\u202Edc\u200B', 'abdc'],
    ['half \uD800 pair', 'half \uFFFD pair'],
    ['25 °C, 8.3 dKH, µ', '25 °C, 8.3 dKH, µ'],
  ])('%j', (text, expected) => {
    expect(plain(text)).toBe(expected);
  });

  it('leaves nothing that steers a terminal', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        expect(plain(text)).not.toMatch(/[\p{Cc}\p{Cf}\p{Cs}\u2028\u2029]/u);
      }),
    );
  });
});

describe('columns', () => {
  it.each([
    ['abc', 3],
    ['25 °C', 5],
    ['e\u0301', 1],
    ['水槽', 4],
    ['🐠', 2],
    ['', 0],
  ])('of %s is %i', (text, expected) => {
    expect(columns(text)).toBe(expected);
  });
});

describe('wrap', () => {
  it.each<[string, string, string[]]>([
    ['one two three four', '', ['one two', 'three', 'four']],
    ['one two three four', '- ', ['- one two', '  three', '  four']],
    ['short', '', ['short']],
    ['', '', ['']],
    ['a  b\n c', '', ['a b c']],
    ['unbreakableword ok', '', ['unbreakableword', 'ok']],
    ['75\u00A0gal 8\u00A0dKH', '', ['75\u00A0gal', '8\u00A0dKH']],
  ])('%j after %j', (text, first, expected) => {
    expect(wrap(text, 9, first)).toEqual(expected);
  });

  it('is never wider than asked but for one long word, and loses no word', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'grapheme', maxLength: 300 }),
        fc.integer({ min: 40, max: 120 }),
        (text, width) => {
          const lines = wrap(text, width, '- ');
          expect(lines.filter((line) => columns(line) > width && words(line.slice(2)).length > 1)).toEqual(
            [],
          );
          expect(words(lines.join(' ').slice(2))).toEqual(words(plain(text)));
        },
      ),
    );
  });
});

describe('list and table', () => {
  it('lines up marks of different length', () => {
    const lines = list(Array<string>(10).fill('x'), style, (place) => `[${place}]`);
    expect([lines[0], lines[9]]).toEqual(['   [1] x', '  [10] x']);
  });

  it('aligns cells and keeps verdicts in a column', () => {
    const rows = [
      ['alkalinity', '8.4 dKH', 'fine'],
      ['calcium', '560 mg/L', 'test again'],
      ['pH', '8.1'],
    ];
    expect(table(rows, style)).toEqual([
      '  alkalinity  8.4 dKH   fine',
      '  calcium     560 mg/L  test again',
      '  pH          8.1',
    ]);
  });

  it('wraps the last column under itself', () => {
    expect(table([['pace', 'half of it today and the other half tomorrow']], style)).toEqual([
      '  pace  half of it today and the other',
      '        half tomorrow',
    ]);
  });

  it('falls back to words where the columns do not fit', () => {
    const long = 'a value that needs far more room than there is';
    expect(table([['label', long, 'watch']], style)).toEqual([
      '  - label: a value that needs far more',
      '    room than there is (watch)',
    ]);
  });

  it('shortens', () => {
    expect(shortened('abcdefghij', 8)).toBe('abcde...');
    expect(shortened('abcdefgh', 8)).toBe('abcdefgh');
  });
});
