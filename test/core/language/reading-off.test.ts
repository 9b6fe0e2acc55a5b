import { describe, expect, it } from 'vitest';
import { percentOfSalt, readingOff } from '../../../core/language/reading-off.ts';
import { saidAs } from '../../../core/language/said.ts';
import { scan } from '../../../core/language/tokens.ts';

const read = (text: string) => {
  const scanned = scan(text);
  return [scanned, scanned.numbers.map((number) => saidAs('now', 'salinity', number, 1))] as const;
};

describe('a reading that is known to be off', () => {
  it.each([
    ['1.0242 swing arm minus its usual .0015', '1.0227 sg'],
    ['reads 1.024 but shows .002 too high', '1.0220 sg'],
    ['refractometer runs low by 0.001, shows 1.024', '1.0250 sg'],
    ['1.024 and .002', undefined],
  ])('%s', (text, right) => expect(readingOff(...read(text))?.reading).toBe(right));

  // 3.5 parts in a hundred are 35 in a thousand.
  it.each([
    ['3.5 percent salt is what sg', '35 ppt'],
    ['set to % and its 3.4', '34 ppt'],
    ['1.025 and 2 % changed', undefined],
  ])('%s', (text, ppt) => expect(percentOfSalt(...read(text))).toBe(ppt));
});
