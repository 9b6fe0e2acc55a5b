import { assert, integer, property } from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hasty, sparse } from '../../../../core/language/learn/disturb.ts';
import { numbersFrom } from '../../../../core/language/learn/random.ts';

const text = 'my alkalinity dropped from 8.2 to 7.1, what happened?';

describe('disturbed copies', () => {
  it('keep every number when typed in haste', () =>
    assert(
      property(integer({ min: 1, max: 1e6 }), (seed) => {
        expect(hasty(text, numbersFrom(seed)).match(/\d\.\d/g)).toEqual(['8.2', '7.1']);
      }),
    ));

  it('leave out about the share of words asked for, and nothing else', () =>
    assert(
      property(integer({ min: 1, max: 1e6 }), (seed) => {
        const left = sparse(text, 0.3, numbersFrom(seed)).split(' ');
        const words = text.split(' ');
        expect(left.every((word) => words.includes(word))).toBe(true);
        expect(left.length).toBeGreaterThanOrEqual(1);
      }),
    ));

  it('leave nothing out at a share of zero, and never everything', () => {
    expect(sparse(text, 0, numbersFrom(1))).toBe(text);
    expect(sparse(text, 1, numbersFrom(1))).toBe(text);
  });
});
