import { describe, expect, it } from 'vitest';
import { chosenByWords } from '../../../bot/terminal/chosen-words.ts';

const choices = ['low rock', 'middle rock', 'top of the rock', 'sand'];

describe('a choice answered in words', () => {
  it.each([
    ['middle', 1],
    ['Middle rock!', 1],
    ['sand', 3],
    ['the top', 2],
    ['you choose', 0],
    ['any', 0],
  ] as const)('%s', (typed, place) => expect(chosenByWords(typed, choices)).toBe(place));

  it.each([
    ['rock', 'names several'],
    ['glass', 'names none'],
    ['my middle clown is on the sand and gasping', 'says something else'],
    ['', 'says nothing'],
  ])('%s: %s', (typed) => expect(chosenByWords(typed, choices)).toBeUndefined());

  it('a number with its unit', () => {
    expect(chosenByWords('7.2 dkh', ['7.2 dKH', '7.2 meq/L'])).toBe(0);
    expect(chosenByWords('meq/l', ['7.2 dKH', '7.2 meq/L'])).toBe(1);
  });
});
