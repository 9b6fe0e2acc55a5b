import { describe, expect, it } from 'vitest';
import { usualLight } from '../../../core/corals/group-light.ts';
import {
  inPpfdRange,
  lightBand,
  lightBands,
  lightBandWords,
  MAX_PPFD,
  par,
  parRange,
} from '../../../core/light/band.ts';
import { Problem } from '../../../core/problem.ts';

// This project's own words, each border twice the one before: project rule.
const rows = [
  { input: 1, expected: 'dim' },
  { input: 39.4, expected: 'dim' },
  { input: 39.6, expected: 'soft' },
  { input: 40, expected: 'soft' },
  { input: 80, expected: 'soft' },
  { input: 81, expected: 'middling' },
  { input: 160, expected: 'middling' },
  { input: 161, expected: 'bright' },
  { input: 320, expected: 'bright' },
  { input: 321, expected: 'very bright' },
  { input: MAX_PPFD, expected: 'very bright' },
];

describe('lightBand', () => {
  it.each(rows)('$input PAR is $expected', ({ input, expected }) => {
    expect(lightBand(input)).toBe(expected);
  });

  it('has borders each twice the one before, and says them', () => {
    const borders = lightBands.slice(0, -1).map(({ toPpfd }) => toPpfd);
    expect(borders).toEqual([40, 80, 160, 320]);
    for (const { word, borders: said } of lightBands) expect(lightBandWords).toContain(`${said} ${word}`);
  });

  // Check values of common practice, no source: corals of low light 50 to 100 PAR, moderate to 200, high above,
  // very high over 300.
  it.each([
    [50, 'soft'],
    [100, 'middling'],
    [200, 'bright'],
    [301, 'bright'],
  ])('the older border %d PAR lies in %s', (ppfd, word) => expect(lightBand(ppfd)).toBe(word));
});

// Common practice, no source: most large-polyp stony corals 50 to 200 PAR, a safe start just over 100.
it('finds the usual light of large-polyp corals near that of common practice', () => {
  const { lowPpfd, highPpfd, startPpfd } = usualLight('large-polyp');
  expect(Math.abs(lowPpfd - 50)).toBeLessThanOrEqual(10);
  expect(Math.abs(highPpfd - 200)).toBeLessThanOrEqual(20);
  expect(startPpfd).toBeGreaterThanOrEqual(85);
  expect(startPpfd).toBeLessThanOrEqual(115);
});

it('prints one light once, and both ends of a range', () => {
  expect(par(133.4)).toBe('133 PAR');
  expect(par(19.96)).toBe('20 PAR');
  expect(par(7.25)).toBe('7.3 PAR');
  expect(parRange(90.2, 110.4)).toBe('90 to 110 PAR');
  expect(parRange(99.8, 100.2)).toBe('100 PAR');
});

describe('inPpfdRange', () => {
  it.each([0, -5, MAX_PPFD + 1, Number.NaN, Infinity])('refuses %s', (ppfd) => {
    expect(() => inPpfdRange('reading', ppfd)).toThrow(Problem);
  });
});
