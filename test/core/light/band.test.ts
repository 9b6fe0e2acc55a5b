import { describe, expect, it } from 'vitest';
import { inPpfdRange, largePolypPpfd, lightBand, MAX_PPFD } from '../../../core/light/band.ts';
import { Problem } from '../../../core/problem.ts';

const rows = [
  { input: 1, expected: 'very low' },
  { input: 49.9, expected: 'very low' },
  { input: 50, expected: 'low' },
  { input: 100, expected: 'low' },
  { input: 100.1, expected: 'moderate' },
  { input: 200, expected: 'moderate' },
  { input: 250, expected: 'high' },
  { input: 300, expected: 'high' },
  { input: 301, expected: 'very high' },
];

describe('lightBand (common practice, no source)', () => {
  it.each(rows)('$input PAR is $expected', ({ input, expected }) => {
    expect(lightBand(input)).toBe(expected);
  });

  it('holds the usual range of large-polyp stony corals within low and moderate (common practice, no source)', () => {
    expect(lightBand(largePolypPpfd.low)).toBe('low');
    expect(lightBand(largePolypPpfd.high)).toBe('moderate');
    expect(lightBand(largePolypPpfd.start + 1)).toBe('moderate');
  });
});

describe('inPpfdRange', () => {
  it.each([0, -5, MAX_PPFD + 1, Number.NaN, Infinity])('refuses %s', (ppfd) => {
    expect(() => inPpfdRange('reading', ppfd)).toThrow(Problem);
  });
});
