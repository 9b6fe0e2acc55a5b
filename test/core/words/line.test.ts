import { describe, expect, it } from 'vitest';
import { Problem } from '../../../core/problem.ts';
import { readLine, type Line } from '../../../core/words/line.ts';
import { problemOf } from '../../commands/text.ts';
import { hostileSample } from '../../hostile.ts';

const read = (text: string, units = {}): Line => readLine(text, 'readings', units);

/** "alkalinity 8.1": each value at three decimals. */
function words({ values }: Line): string {
  return values.map(({ parameter, value }) => `${parameter} ${Number(value.toFixed(3))}`).join(', ');
}

// 1.025 at 25/25 is S 33.19 (EOS-80, Fofonoff & Millard 1983); 78 °F = 25.556 °C exactly (NIST SP 811).
describe('readLine', () => {
  const table: [string, string][] = [
    [
      '420/8.1/1350 sg 1.025 78f no3 8 po4 .06',
      'calcium 420, alkalinity 8.1, magnesium 1350, salinity 33.188, temperature 25.556, nitrate 8, phosphate 0.06',
    ],
    ['8.1/420/1350', 'calcium 420, alkalinity 8.1, magnesium 1350'],
    ['420 / 8,1 / 1350', 'calcium 420, alkalinity 8.1, magnesium 1350'],
    ['alk 8,3 ca 420 mg 1350', 'alkalinity 8.3, calcium 420, magnesium 1350'],
    ['ca 420 kh 8.1 mg 1,350', 'calcium 420, alkalinity 8.1, magnesium 1350'],
    ['8.3 alk 420 ca 1350 mg', 'alkalinity 8.3, calcium 420, magnesium 1350'],
    ['kh=8.2', 'alkalinity 8.2'],
    ['KH: 8.2; NO3: 8', 'alkalinity 8.2, nitrate 8'],
    ['kh8.2 ca420 k400', 'alkalinity 8.2, calcium 420, potassium 400'],
    ['8.2 dkh', 'alkalinity 8.2'],
    ['alk eight point three, calcium four twenty', 'alkalinity 8.3, calcium 420'],
    ['sg one oh two five', 'salinity 33.188'],
    ['calcium: 420 ppm; magnesium: 1350 ppm', 'calcium 420, magnesium 1350'],
    ['ca 420 mg, mg 1350 mg', 'calcium 420, magnesium 1350'],
    ['Temp 25.4C pH 8.05 Sal 34.8', 'temperature 25.4, ph 8.05, salinity 34.8'],
    ['ammonia 0.25 ppm no2 0.5 ppm', 'ammonia 0.25, nitrite 0.5'],
    ['alk (kh) 8.2', 'alkalinity 8.2'],
    ['sr 8.1 br 65 iodine .06', 'strontium 8.1, bromide 65, iodine 0.06'],
    ['temp 78', 'temperature 25.556'],
    ['35 ppt', 'salinity 35'],
    ['sg 1.024 ppt', 'salinity 31.867'],
    ['no3 <2', 'nitrate 2'],
    ['po4 18 ppb p', 'phosphate 0.055'],
  ];
  it.each(table)('%s', (text, expected) => {
    const line = read(text);
    expect(words(line)).toBe(expected);
    expect(line.unread).toEqual([]);
  });

  // 53.065 mS/cm at 25 °C is S 35 (PSS-78: C(35, 15) = 42.914, Culkin & Smith 1980).
  it('reads conductivity and the pair of a specific gravity as salinity', () => {
    expect(read('conductivity 53.07 mS/cm ph 8.2').values[0]?.value).toBeCloseTo(35, 1);
    const on20 = read('sg 1.026 20/20 ph 8.2');
    expect(on20.values[0]?.value).toBeLessThan(read('sg 1.026').values[0]?.value ?? 0);
    expect(on20.unread).toEqual([]);
  });

  const unread: [string, string, string[]][] = [
    ['boron 4.2', '', ['boron 4.2']],
    ['ca 420 boron 4.2', 'calcium 420', ['boron 4.2']],
    ['kh ca 420', 'calcium 420', ['kh']],
    ['8.3 ca 420', 'calcium 420', ['8.3']],
    ['ca -420', '', ['ca -420']],
    ['no3 5-10', '', ['no3 5-10']],
    ['kh 7 to 8', '', ['kh 7 to 8']],
    ['ca 420 ca 430', 'calcium 420', ['ca 430']],
    ['ca 8.2 dkh', 'alkalinity 8.2', ['ca']],
    ['nitrate undetectable kh 8', 'nitrate 0, alkalinity 8', []],
    ['12:30 kh 8', 'alkalinity 8', ['12:30']],
    ['kh 8.2 after a water change', 'alkalinity 8.2', ['after a water change']],
  ];
  it.each(unread)('%s: what is not read is named', (text, values, rest) => {
    const line = read(text);
    expect(words(line)).toBe(values);
    expect(line.unread).toEqual(rest);
  });

  it('takes the same reading twice as one', () => {
    expect(read('450/9.5/1350 same as 9.5/450/1350').values).toHaveLength(3);
  });

  it.each([
    ['alk 3.2 ca 420', ['alk 3.2 dKH, ca 420', 'alk 3.2 meq/L, ca 420']],
    ['po4 18', ['po4 18 ppb PO4', 'po4 18 ppb P']],
    ['kh 8 temp 45', ['kh 8, temp 45 °C', 'kh 8, temp 45 °F']],
    ['sg 35', ['sg 35 ppt']],
  ])('%s: asks for the unit with whole lines to choose', (text, choices) => {
    const problem = problemOf(() => read(text));
    expect(problem.field).toBe('readings');
    expect(problem.choices).toEqual(choices);
    for (const choice of problem.choices) expect(read(choice).unread).toEqual([]);
  });

  it('takes the preferred unit only where the size leaves a choice', () => {
    const units = { alkalinity: 'meq/L', temperature: '°F' };
    const [asked] = read('alk 3.2', units).values;
    expect(asked?.value).toBeCloseTo(3.2 * 2.804, 2); // 1 meq/L = 2.804 dKH
    expect(asked?.notes).toEqual(['3.2 read in your preferred unit, meq/L']);
    expect(words(read('alk 8.1 temp 25', units))).toBe('alkalinity 8.1, temperature 25');
  });

  it('flags what is hard to believe and still reads it', () => {
    const { values } = read('ca 560 kh 8');
    expect(values.map(({ plausible }) => plausible)).toEqual([false, true]);
  });

  it('ends hostile texts in finite values or a Problem', () => {
    const bad: string[] = [];
    let readings = 0;
    for (const text of hostileSample(3, 4000)) {
      try {
        const { values } = read(text);
        readings += values.length;
        if (values.some(({ value }) => !(value >= -5 && value <= 1e6))) bad.push(text);
      } catch (error) {
        if (!(error instanceof Problem)) bad.push(`${text}: ${String(error)}`);
      }
    }
    expect(bad).toEqual([]);
    expect(readings).toBeGreaterThan(100);
  });
});
