import { describe, expect, it } from 'vitest';
import { nearest } from '../../commands/nearest.ts';
import { editDistance } from '../../core/edit-distance.ts';

describe('editDistance', () => {
  // Textbook examples of the Levenshtein distance (Wagner & Fischer 1974, J. ACM 21:168-173, define it; from memory).
  it.each([
    ['kitten', 'sitting', 3],
    ['sunday', 'saturday', 3],
    ['', 'abc', 3],
    ['abc', '', 3],
    ['same', 'same', 0],
    ['ca', 'ac', 1],
    ['now', 'nwo', 1],
  ])('%s to %s is %i', (a, b, expected) => {
    expect(editDistance(a, b)).toBe(expected);
    expect(editDistance(b, a)).toBe(expected);
  });
});

describe('nearest', () => {
  const names = ['dose', 'convert', 'light', 'salinity'];

  it.each([
    ['dosse', 'dose'],
    ['CONV', 'convert'],
    ['lihgt', 'light'],
    ['', undefined],
    ['zzzzzzzz', undefined],
    ['z'.repeat(100_000), undefined],
  ])('of %s', (word, expected) => {
    expect(nearest(word, names)).toBe(expected);
  });
});
