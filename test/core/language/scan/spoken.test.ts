import { describe, expect, it } from 'vitest';
import { spoken } from '../../../../core/language/scan/spoken.ts';

describe('a number in words', () => {
  it.each<readonly [string, number, number]>([
    ['nine', 9, 1],
    ['twenty five', 25, 2],
    ['two hundred', 200, 2],
    ['a hundred and four', 104, 4],
    ['three thousand five hundred', 3500, 4],
    ['four twenty', 420, 2],
    ['eight point for', 8.4, 3],
    ['ate point six', 8.6, 3],
    ['point oh five', 0.05, 3],
    ['ten twenty five', 1.025, 3],
    ['a dozen', 12, 2],
    ['a fifth', 0.2, 2],
    ['a tenth', 0.1, 2],
    ['twice', 2, 1],
  ])('%s', (text, value, words) => {
    expect(spoken(text.split(' '), 0)).toMatchObject({ value, words });
  });

  it.each(['the', 'point', 'ate', 'to', 'a'])('%s is none', (word) =>
    expect(spoken([word], 0)).toBeUndefined(),
  );
});
