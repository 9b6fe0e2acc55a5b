import type { ChosenUnits } from '../../../core/quantity/chosen-units.ts';
import { describe, expect, it } from 'vitest';
import type { TankProfile } from '../../../commands/keep.ts';
import { askedStarted } from '../../../commands/tank/asked-started.ts';
import { askedTargets } from '../../../commands/tank/asked-targets.ts';
import { ageWords, rangeWords } from '../../../commands/tank/print.ts';
import { problemOf } from '../text.ts';
import { NOW_MS } from './member.ts';

describe('askedStarted', () => {
  it.each([
    ['2025-01-03', '2025-01-03'],
    ['3 Jan 2025', '2025-01-03'],
    ['January 3, 2025', '2025-01-03'],
    ['3 Jan', '2026-01-03'],
    ['24 Dec', '2025-12-24'],
    ['29 Feb 2024', '2024-02-29'],
    ['2026-05-05', '2026-05-05'],
  ])('%s -> %s', (text, expected) => expect(askedStarted(text, NOW_MS)).toBe(expected));

  it.each(['2027-01-01', '3/4/2025', 'long ago', '30 Feb 2025', '1066-10-14'])('refuses %s', (text) => {
    expect(problemOf(() => askedStarted(text, NOW_MS)).field).toBe('started');
  });
});

describe('ageWords', () => {
  it.each([
    ['2026-05-05', '0 days'],
    ['2026-05-04', '1 day'],
    ['2026-03-06', '60 days'],
    ['2026-03-05', '2 months'],
    ['2025-05-06', '11 months'],
    ['2025-05-05', '1 year'],
    ['2023-12-31', '2 years 4 months'],
  ])('%s -> %s', (started, expected) => expect(ageWords(started, NOW_MS)).toBe(expected));
});

function read(text: string, units: ChosenUnits = {}): TankProfile['targets'] {
  return askedTargets(text, {}, units).targets;
}

describe('askedTargets', () => {
  it.each([
    ['alk 8-9, ca 420-440', { alkalinity: [8, 9], calcium: [420, 440] }],
    ['KH: 8,0 to 9,5 dKH; no3 2-10', { alkalinity: [8, 9.5], nitrate: [2, 10] }],
    ['temp 77-79 F', { temperature: [25, 26.1111] }],
    ['temp 25-26', { temperature: [25, 26] }],
    ['po4 0.03 - 0.08 ppm', { phosphate: [0.03, 0.08] }],
    ['salinity 34-35.5 ppt', { salinity: [34, 35.5] }],
    ['ph 8.0 to 8.4', { ph: [8, 8.4] }],
    ['nitrite 0-0.1', { nitrite: [0, 0.1] }],
  ])('%s', (text, expected) => expect(read(text)).toEqual(expected));

  it('specific gravity 1.025 to 1.026 at 25 °C is 33.2 to 34.5 (EOS-80, Unesco 44)', () => {
    const [low = 0, high = 0] = read('sg 1.025-1.026').salinity ?? [];
    expect(low).toBeCloseTo(33.2, 1);
    expect(high).toBeCloseTo(34.5, 1);
    expect(askedTargets('sg 1.025-1.026', {}, {}).read.join(' ')).toMatch(
      /specific gravity taken as the scale/,
    );
  });

  it('a bare alkalinity takes the preferred unit: 2.5 to 3 meq/L is 7.01 to 8.41 dKH (2.804 dKH per meq/L)', () => {
    const [low = 0, high = 0] = read('alk 2.5-3', { alkalinity: 'meq/L' }).alkalinity ?? [];
    expect(low).toBeCloseTo(7.01, 2);
    expect(high).toBeCloseTo(8.41, 2);
  });

  it.each([
    'alk 9-8',
    'alk 30-40',
    'happiness 8-9',
    'alk',
    'ca 420',
    'ca 8-9',
    'salinity 50-60',
    'alk 8-9 ca 400-420',
  ])('refuses %s', (text) => expect(problemOf(() => read(text)).field).toBe('targets'));
});

describe('rangeWords', () => {
  it.each([
    ['alkalinity', [8, 9], {}, '8 to 9 dKH'],
    ['alkalinity', [7, 11], { alkalinity: 'meq/L' }, '2.5 to 3.92 meq/L'],
    ['alkalinity', [7, 11], { alkalinity: 'ppm CaCO3' }, '125 to 196 ppm CaCO3'],
    ['temperature', [24, 27], { temperature: '°F' }, '75.2 to 80.6 °F'],
    ['salinity', [34, 36], {}, '34 to 36 ppt'],
    ['ph', [7.8, 8.4], {}, '7.8 to 8.4'],
  ] as const)('%s %j in %j is %s', (id, range, units, expected) => {
    expect(rangeWords(id, range, units)).toBe(expected);
  });
});
