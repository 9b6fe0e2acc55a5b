import { findParameter } from '../../../core/water/parameter.ts';
import { describe, expect, it } from 'vitest';
import { printed, printedChange, readLogged } from '../../../core/log/value.ts';
import { problemOf } from '../../commands/text.ts';

describe('findParameter', () => {
  it.each([
    ['KH', 'alkalinity'],
    ['NO3', 'nitrate'],
    ['sg', 'salinity'],
    ['Salinity', 'salinity'],
    ['pH', 'ph'],
    ['boron', undefined],
  ])('%s -> %s', (word, id) => expect(findParameter(word)).toBe(id));
});

// 1 meq/L = 2.804 dKH, 50.04 mg/L CaCO3 (IUPAC 2021 weights); 78 °F = 25.556 °C.
describe('readLogged', () => {
  it.each([
    ['alkalinity', '2.9 meq/L', 8.131],
    ['alkalinity', '150 ppm', 8.404],
    ['temperature', '78 F', 25.556],
    ['calcium', '1,350', 1.35],
    ['magnesium', '1,350', 1350],
    ['phosphate', '30 ppb', 0.03],
    ['salinity', '35 ppt', 35],
  ] as const)('%s %s', (id, text, value) => {
    if (id === 'calcium') expect(problemOf(() => readLogged(id, text, 'x')).choices).toHaveLength(2);
    else expect(readLogged(id, text, 'x').value).toBeCloseTo(value, 3);
  });
});

describe('printed', () => {
  it('prints in the own or the preferred unit', () => {
    const units = { alkalinity: 'meq/L', temperature: '°F' };
    expect(printed('alkalinity', 8.131)).toBe('8.1 dKH');
    expect(printed('alkalinity', 8.131, units)).toBe('2.9 meq/L');
    expect(printed('temperature', 25.5556, units)).toBe('78 °F');
    expect(printed('ph', 8.1)).toBe('8.1');
    expect(printed('salinity', 35, units)).toBe('35 ppt');
  });

  it('prints a change without an offset', () => {
    expect(printedChange('alkalinity', 9.3, 7.5)).toBe('−1.8 dKH');
    expect(printedChange('temperature', 25, 26, { temperature: '°F' })).toBe('+1.8 °F');
    expect(printedChange('calcium', 420, 420.2)).toBe('no change');
  });
});
