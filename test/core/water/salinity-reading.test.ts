import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Problem } from '../../../core/problem.ts';
import { onScale, readSalinity } from '../../../core/water/salinity-reading.ts';

const eos = 'computed with EOS-80 (Fofonoff & Millard 1983) over pure water at the same temperature';
const pss = 'computed with PSS-78 in the TEOS-10 library';
const ref = 'Millero et al. 2008: 35.16504 g/kg at S 35';

const table = [
  { text: '1.025', expected: 33.188, scale: 'SG', source: eos },
  { text: '1,025', expected: 33.188, scale: 'SG', source: eos },
  { text: '1025', expected: 33.188, scale: 'SG', source: eos },
  { text: '1.026 sg', expected: 34.508, scale: 'SG', source: eos },
  { text: 'SG: 1.026', expected: 34.508, scale: 'SG', source: eos },
  { text: '1.0264 60F/60F', expected: 34.404, scale: 'SG', source: eos },
  { text: '1.0264 20/20', expected: 34.733, scale: 'SG', source: eos },
  { text: '1.0264 at 25/25', expected: 35.036, scale: 'SG', source: eos },
  { text: '1.024 ppt', expected: 31.867, scale: 'SG', source: eos },
  { text: '35', expected: 35, scale: 'ppt', source: 'by definition' },
  { text: '35 ppt', expected: 35, scale: 'ppt', source: 'by definition' },
  { text: '35,0 ‰', expected: 35, scale: 'ppt', source: 'by definition' },
  { text: '35 psu', expected: 35, scale: 'ppt', source: 'by definition' },
  { text: '35.16504 g/kg', expected: 35, scale: 'g/kg', source: ref },
  { text: '53 mS/cm', expected: 34.9473, scale: 'mS/cm', source: pss },
  { text: '53000 µS/cm at 25 C', expected: 34.9473, scale: 'mS/cm', source: pss },
  { text: '53000', expected: 34.9473, scale: 'mS/cm', source: pss },
  { text: '54 mS/cm at 26 C', expected: 34.91397, scale: 'mS/cm', source: pss },
  { text: '48 mS at 68 F', expected: 35.06719, scale: 'mS/cm', source: pss },
];

const field = 'reading';

describe('a member’s salinity', () => {
  it.each(table)('$text -> $expected', ({ text, expected, scale }) => {
    const found = readSalinity(text, { field });
    expect(found.scale).toBe(scale);
    expect(Math.abs(found.practicalSalinity - expected)).toBeLessThan(0.001);
  });

  it.each([
    { text: '1.024 ppt', note: /specific gravity, not ppt/ },
    { text: '1.025', note: /taken as the scale 25 °C/ },
    { text: '1,025', note: /read 1,025 as 1\.025/ },
    { text: '35', note: /as ppt/ },
    { text: '53 mS/cm', note: /compensated to 25/ },
    { text: '45 mS at 20 C', note: /plain value at 20/ },
    { text: '53 µS', note: /µS as mS/ },
  ])('says what it assumed for $text', ({ text, note }) => {
    expect(readSalinity(text, { field }).notes.join('; ')).toMatch(note);
  });

  it.each([
    { text: '53', choices: ['53 mS/cm'] },
    { text: '26', choices: ['26 ppt', '1.026 SG', '26 mS/cm'] },
    { text: '35 sg', choices: ['35 ppt'] },
    { text: '0.5', choices: [] },
  ])('asks back for $text, and every choice can be read', ({ text, choices }) => {
    let problem: unknown;
    try {
      readSalinity(text, { field });
    } catch (error) {
      problem = error;
    }
    expect(problem).toBeInstanceOf(Problem);
    expect(problem).toMatchObject({ field, choices });
    for (const choice of choices)
      expect(readSalinity(choice, { field }).practicalSalinity).toBeGreaterThan(0);
  });

  it.each([
    'abc',
    '',
    '-35 ppt',
    '50 ppt',
    '1.05',
    '1.026 20/25',
    '35 g',
    '130 mS/cm',
    '1.025 1.026',
    'NaN',
    '9'.repeat(150),
  ])('refuses "%s" naming the option', (text) => {
    expect(() => readSalinity(text, { field })).toThrow(expect.objectContaining({ name: 'Problem', field }));
  });

  it('takes the pair given beside the text, and a glass hydrometer’s water temperature', () => {
    expect(readSalinity('1.0264', { field, pair: '20/20' }).practicalSalinity).toBeCloseTo(34.733, 2);
    // 60F/60F glass in 25 degC water at S 35: 1.024350 (EOS-80) plus the glass, 2.5e-5 per K from memory, about 0.0002.
    const warm = readSalinity('1.0246', { field, pair: '60F/60F', waterTempC: 25 });
    expect(Math.abs(warm.practicalSalinity - 35)).toBeLessThan(0.05);
    expect(warm.notes.join(' ')).toMatch(/glass hydrometer/);
  });

  it('reads back what each scale shows', () => {
    fc.assert(
      fc.property(fc.double({ min: 20, max: 41, noNaN: true }), (s) => {
        const shown = {
          SG: onScale(s, 'SG'),
          ppt: s,
          'g/kg': onScale(s, 'g/kg'),
          'mS/cm': onScale(s, 'mS/cm'),
        };
        for (const [scale, value] of Object.entries(shown)) {
          expect(readSalinity(`${value.toFixed(9)} ${scale}`, { field }).practicalSalinity).toBeCloseTo(s, 5);
        }
      }),
    );
  });
});
