import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inUnit, toUnit } from '../../../core/quantity/format.ts';
import { readAlike, readQuantity, type ReadOptions } from '../../../core/quantity/read.ts';
import { definitionOf, quantities, type QuantityKind } from '../../../core/quantity/unit.ts';
import { problemOf } from '../../commands/text.ts';

const read = (kind: QuantityKind, text: string, extra: Partial<ReadOptions> = {}): number =>
  readQuantity(kind, text, { field: 'x', ...extra }).value;

describe('arithmetic and writing habits', () => {
  const table: { kind: QuantityKind; text: string; expected: number }[] = [
    { kind: 'volume', text: '3 * 20 L - 10 %', expected: 54 },
    { kind: 'volume', text: '3 x 20 L', expected: 60 },
    { kind: 'volume', text: '3 × 20 l', expected: 60 },
    { kind: 'volume', text: '(40 + 10) L', expected: 50 },
    { kind: 'volume', text: '10 US gal - 3 L', expected: 34.85411784 },
    { kind: 'volume', text: '100 L * 85 %', expected: 85 },
    { kind: 'volume', text: '120 x 50 x 50 cm', expected: 300 },
    { kind: 'volume', text: '36 x 18 x 18 in', expected: 191.138714 },
    { kind: 'volume', text: '36" x 18" x 18"', expected: 191.138714 },
    { kind: 'volume', text: '4 ft x 18 in x 18 in', expected: 254.851619 },
    { kind: 'volume', text: '75g', expected: 283.9058838 },
    { kind: 'volume', text: '75 gal', expected: 283.9058838 },
    { kind: 'volume', text: '1.234,5 L', expected: 1234.5 },
    { kind: 'volume', text: '1,234.5 L', expected: 1234.5 },
    { kind: 'volume', text: '~ 180 litres', expected: 180 },
    { kind: 'volume', text: 'about 180l', expected: 180 },
    { kind: 'volume', text: '.5 L', expected: 0.5 },
    { kind: 'volume', text: '1/2 L', expected: 0.5 },
    { kind: 'volume', text: '2\u200B0 L', expected: 20 },
    { kind: 'alkalinity', text: '8,3 dKH', expected: 8.3 * 0.35665246 },
    { kind: 'conductivity', text: '53000 μS/cm', expected: 53 },
    { kind: 'conductivity', text: '53000 µS', expected: 53 },
    { kind: 'mass', text: '10g + 500 mg', expected: 10.5 },
    { kind: 'temperature', text: '78', expected: 25.5556 },
    { kind: 'temperature', text: '25.5', expected: 25.5 },
    { kind: 'alkalinity', text: '7.2', expected: 7.2 * 0.35665246 },
    { kind: 'days', text: '2 weeks', expected: 14 },
    { kind: 'share', text: '20', expected: 20 },
  ];
  it.each(table)('$kind "$text" is $expected', ({ kind, text, expected }) => {
    expect(read(kind, text)).toBeCloseTo(expected, 3);
  });

  it('says how it read "75g" in a volume slot', () => {
    expect(readQuantity('volume', '75g', { field: 'volume' }).notes.join()).toContain('US gallons');
  });

  it('says which unit it gave a bare reading', () => {
    expect(readQuantity('alkalinity', '7.2', { field: 'now' }).notes).toEqual(['read 7.2 as dKH']);
  });
});

describe('ambiguity is asked back', () => {
  const table: { kind: QuantityKind; text: string; choices: string[] }[] = [
    { kind: 'volume', text: '75', choices: ['75 L', '75 US gal', '75 imp gal'] },
    { kind: 'alkalinity', text: '3.2', choices: ['3.2 dKH', '3.2 meq/L'] },
    { kind: 'mass', text: '12', choices: ['12 g', '12 kg', '12 oz', '12 lb'] },
    { kind: 'phosphate', text: '18', choices: ['18 ppb PO4', '18 ppb P'] },
    { kind: 'volume', text: '1,200 L', choices: ['1.2 L', '1200 L'] },
    { kind: 'volume', text: '1.000 L', choices: ['1 L', '1000 L'] },
    { kind: 'mass', text: '2.500 g', choices: ['2.5 g', '2500 g'] },
    { kind: 'volume', text: '120 x 50 x 50', choices: ['120 x 50 x 50 cm', '120 x 50 x 50 in'] },
  ];
  it.each(table)('$kind "$text"', ({ kind, text, choices }) => {
    expect(problemOf(() => read(kind, text)).choices).toEqual(choices);
  });

  it('every choice offered can be read', () => {
    for (const { kind, choices } of table)
      for (const choice of choices) expect(read(kind, choice)).toBeGreaterThan(0);
  });

  it('settles 1,350 where only one reading is plausible, and says so', () => {
    const found = readQuantity('concentration', '1,350', { field: 'now', plausible: [800, 1800] });
    expect(found.value).toBe(1350);
    expect(found.notes.join()).toContain('1350');
  });

  it('reads 1.350 as thousands only where 1.35 cannot be believed', () => {
    expect(read('concentration', '1.350', { plausible: [800, 1800] })).toBe(1350);
    expect(read('concentration', '1.350', { plausible: [1, 25] })).toBe(1.35);
    expect(read('concentration', '1.35', { plausible: [800, 1800] })).toBe(1.35);
  });

  it('says that a point before three digits was read as a decimal', () => {
    const found = readQuantity('volume', '1.234 L', { field: 'volume' });
    expect(found.value).toBeCloseTo(1.234, 9);
    expect(found.notes).toEqual(['read 1.234 L as 1.234 L, with a decimal point']);
  });

  it('gives a bare number the unit its partner has', () => {
    const [now, goal] = readAlike('alkalinity', [
      { text: '5.1', field: 'now' },
      { text: '8', field: 'goal' },
    ]);
    expect(now?.unit).toBe('dKH');
    expect(goal?.unit).toBe('dKH');
    expect(
      readAlike('volume', [
        { text: '5', field: 'a' },
        { text: '8 L', field: 'b' },
      ])[0]?.value,
    ).toBe(5);
  });
});

describe('what is refused', () => {
  const table: [QuantityKind, string][] = [
    ['volume', ''],
    ['volume', 'lots'],
    ['volume', '-5 L'],
    ['volume', '0 L'],
    ['volume', '1e999 L'],
    ['volume', '5 L * 5 L'],
    ['volume', '5 L + 5'],
    ['volume', '1/0 L'],
    ['volume', '5 dKH'],
    ['volume', 'import("fs")'],
    ['volume', 'a = 5 L'],
    ['volume', '[1,2] L'],
    ['volume', `${'('.repeat(60)}5${')'.repeat(60)} L`],
    ['volume', `${'1+'.repeat(150)}1 L`],
    ['volume', '1.2.3 L'],
    ['alkalinity', '900 dKH'],
    ['temperature', '500 F'],
    ['temperature', '20 C + 70 F'],
    ['mass', '5 µS'],
    ['volume', '5 u0'],
    ['volume', '10 L + 5 u1'],
  ];
  it.each(table)('%s "%s"', (kind, text) => {
    const problem = problemOf(() => read(kind, text));
    expect(problem.field).toBe('x');
    expect(problem.message).not.toBe('');
  });
});

describe('round trips', () => {
  const kinds = Object.keys(quantities) as QuantityKind[];
  it.each(kinds)('%s: printed in a unit and read back', (kind) => {
    const { units, min, max } = definitionOf(kind);
    fc.assert(
      fc.property(
        fc.constantFrom(...units),
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        (unit, part) => {
          const value = min + part * (max - min);
          const printed = `${toUnit(kind, value, unit.symbol).toFixed(9)} ${unit.symbol}`;
          expect(read(kind, printed)).toBeCloseTo(value, 2);
        },
      ),
    );
  });

  it('what is printed for people is within half a unit of its last place', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 19, noNaN: true }), (dkh) => {
        const canonical = read('alkalinity', `${dkh.toFixed(12)} dKH`);
        expect(
          Math.abs(Number.parseFloat(inUnit('alkalinity', canonical, 'dKH', 2)) - dkh),
        ).toBeLessThanOrEqual(0.0051);
      }),
    );
  });
});
