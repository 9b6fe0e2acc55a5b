import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fixed, fromTo, significant, span } from '../../../core/quantity/format.ts';

describe('numbers for people', () => {
  it.each([
    [283.906, 4, '283.9'],
    [0.000123, 2, '0.00012'],
    [1347, 3, '1347'],
    [1_003_447, 3, '1003000'],
    [-0.0000000000001, 3, '0'],
    [3e200, 3, 'over 10^15'],
    [Number.NaN, 3, 'unknown'],
  ])('%d with %d figures', (value, digits, text) => {
    expect(significant(value, digits)).toBe(text);
  });

  it('never has an exponent, a minus nothing or a trailing zero', () => {
    fc.assert(
      fc.property(fc.double(), fc.integer({ min: 1, max: 6 }), (value, digits) => {
        for (const text of [significant(value, digits), fixed(value, digits)])
          expect(text).toMatch(/^(?:-?(?:0|[1-9]\d*)(?:\.\d*[1-9])?|unknown|over 10\^15|under -10\^15)$/);
        expect(significant(value, digits)).not.toBe('-0');
      }),
      { numRuns: 2000 },
    );
  });

  it('makes one figure of two that are printed alike', () => {
    expect(span('8', '8.1')).toBe('8 to 8.1');
    expect(span('8', '8')).toBe('8');
    expect(fromTo('8 dKH', '8.4 dKH')).toBe('from 8 dKH to 8.4 dKH');
    expect(fromTo('8 dKH', '8 dKH')).toBe('at 8 dKH but for less than is shown');
  });
});
