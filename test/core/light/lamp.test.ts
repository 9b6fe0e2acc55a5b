import { describe, expect, it } from 'vitest';
import { cieIlluminants } from '../../../core/light/illuminant.ts';
import { anyLampLuxPerPpfd, lamp, lampIds, lamps } from '../../../core/light/lamp.ts';

describe('CIE illuminants against Thimijan & Heins 1983 (through later listings), which differ by up to 6 %', () => {
  it.each([
    { illuminant: 'A', listed: 50, of: 'incandescent' },
    { illuminant: 'D65', listed: 54, of: 'sun and sky daylight' },
    { illuminant: 'FL2', listed: 74, of: 'cool-white fluorescent' },
    { illuminant: 'HP1', listed: 82, of: 'high-pressure sodium' },
  ] as const)('$illuminant is near $listed, $of', ({ illuminant, listed }) => {
    expect(Math.abs(cieIlluminants[illuminant].luxPerPpfd / listed - 1)).toBeLessThan(0.06);
  });
});

describe('lamps', () => {
  it.each(lampIds)('%s has a real span, a basis and sources', (id) => {
    const { luxPerPpfd, basis, sources } = lamp(id);
    expect(luxPerPpfd.low).toBeGreaterThan(0);
    expect(luxPerPpfd.high).toBeGreaterThan(luxPerPpfd.low);
    expect(basis).not.toBe('');
    expect(sources.length).toBeGreaterThan(0);
  });

  it.each([
    { id: 'daylight', factor: 54, source: 'Thimijan & Heins 1983, sun and sky' },
    { id: 'halide', factor: 71, source: 'Thimijan & Heins 1983, metal halide' },
    { id: 'fluorescent', factor: 74, source: 'Thimijan & Heins 1983, cool white' },
    { id: 'white', factor: 69.401, source: 'CIE LED-B5' },
    { id: 'white', factor: 60.538, source: 'CIE LED-RGB1' },
    { id: 'blue', factor: 9.2498, source: '80 % 450/20 and 20 % 470/20, from the 1 nm CIE table' },
    { id: 'blue-white', factor: 25, source: 'bluish reef light 20 to 30: common practice, no source' },
    { id: 'led', factor: 34.6347, source: 'blue, green and red bands, from the 1 nm CIE table' },
  ] as const)('$id spans $factor ($source)', ({ id, factor }) => {
    expect(lamps[id].luxPerPpfd.low).toBeLessThanOrEqual(factor);
    expect(lamps[id].luxPerPpfd.high).toBeGreaterThanOrEqual(factor);
  });

  it('an unnamed lamp spans every one of them', () => {
    for (const id of lampIds) {
      expect(anyLampLuxPerPpfd.low).toBeLessThanOrEqual(lamps[id].luxPerPpfd.low);
      expect(anyLampLuxPerPpfd.high).toBeGreaterThanOrEqual(lamps[id].luxPerPpfd.high);
    }
  });
});
