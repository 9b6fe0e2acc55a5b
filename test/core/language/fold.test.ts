import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fold } from '../../../core/language/fold.ts';

describe('a folded text', () => {
  it.each([
    ['Alk 8\u2013 9', 'alk 8- 9'],
    ['24\u201D x 12\u2033', '24" x 12"'],
    ['it\u2019s 120\u00D750', "it's 120x50"],
    ['PO\u2084 0.03', 'po4 0.03'],
    ['8\u00A0dKH\u200B', '8 dkh '],
    ['9 \u2192 7', '9 > 7'],
  ])('%s', (given, folded) => expect(fold(given)).toBe(folded));

  it('has every place where it was', () => {
    const wrong = fc.check(
      fc.property(fc.string({ unit: 'binary', maxLength: 200 }), (text) => fold(text).length === text.length),
    );
    expect(wrong.failed, String(wrong.counterexample)).toBe(false);
  });
});
