import { describe, expect, it } from 'vitest';
import { readQuantity } from '../../../core/quantity/read.ts';
import {
  definitionOf,
  DKH_PER_MEQ_L,
  MG_CACO3_PER_MEQ,
  NO3_PER_N,
  PO4_PER_P,
  quantities,
  type QuantityKind,
} from '../../../core/quantity/unit.ts';

const kinds = Object.keys(quantities) as QuantityKind[];

describe('unit relations', () => {
  // Computed from IUPAC 2021 weights (Pure Appl. Chem. 94:573-600); gallons and inch: SI Brochure, exact.
  const table: { name: string; value: number; expected: number; tolerance: number; source: string }[] = [
    { name: 'dKH per meq/L', value: DKH_PER_MEQ_L, expected: 2.80385, tolerance: 1e-5, source: 'iupac21' },
    {
      name: 'mg CaCO3 per meq',
      value: MG_CACO3_PER_MEQ,
      expected: 50.043,
      tolerance: 1e-3,
      source: 'iupac21',
    },
    { name: 'NO3 per NO3-N', value: NO3_PER_N, expected: 4.4266438, tolerance: 1e-6, source: 'iupac21' },
    { name: 'PO4 per PO4-P', value: PO4_PER_P, expected: 3.0661358, tolerance: 1e-6, source: 'iupac21' },
  ];
  it.each(table)('$name is $expected ($source)', ({ value, expected, tolerance }) => {
    expect(Math.abs(value - expected)).toBeLessThanOrEqual(tolerance);
  });

  const readings: {
    kind: QuantityKind;
    text: string;
    expected: number;
    tolerance: number;
    source: string;
  }[] = [
    { kind: 'volume', text: '1 US gal', expected: 3.785411784, tolerance: 1e-12, source: 'si19, exact' },
    { kind: 'volume', text: '1 imp gal', expected: 4.54609, tolerance: 1e-12, source: 'si19, exact' },
    { kind: 'volume', text: '4 quarts', expected: 3.785411784, tolerance: 1e-9, source: 'a quarter gallon' },
    { kind: 'volume', text: '16 cups', expected: 3.785411784, tolerance: 1e-9, source: 'a sixteenth gallon' },
    { kind: 'length', text: '1 in', expected: 2.54, tolerance: 1e-12, source: 'si19, exact' },
    { kind: 'mass', text: '1 lb', expected: 453.59237, tolerance: 1e-9, source: 'si19, exact' },
    { kind: 'mass', text: '16 oz', expected: 453.59237, tolerance: 1e-9, source: 'si19, exact' },
    { kind: 'alkalinity', text: '1 dKH', expected: 0.35665246, tolerance: 1e-6, source: 'iupac21' },
    {
      kind: 'alkalinity',
      text: '180 ppm',
      expected: 3.6,
      tolerance: 5e-3,
      source: 'KP-G05 arithmetic: 3.60 meq/L',
    },
    { kind: 'nitrate', text: '1 ppm NO3-N', expected: 4.4266438, tolerance: 1e-6, source: 'iupac21' },
    { kind: 'phosphate', text: '18 ppb P', expected: 0.0552, tolerance: 1e-4, source: 'iupac21: x 3.0661' },
    { kind: 'temperature', text: '78 F', expected: 25.5556, tolerance: 1e-4, source: '(F - 32) x 5/9' },
    { kind: 'temperature', text: '32 °F', expected: 0, tolerance: 1e-9, source: '(F - 32) x 5/9' },
    { kind: 'conductivity', text: '53000 µS/cm', expected: 53, tolerance: 1e-9, source: 'SI prefix' },
  ];
  it.each(readings)('$text is $expected ($source)', ({ kind, text, expected, tolerance }) => {
    expect(Math.abs(readQuantity(kind, text, { field: 'x' }).value - expected)).toBeLessThanOrEqual(
      tolerance,
    );
  });
});

describe('the table of units', () => {
  it.each(kinds)('%s names every spelling once', (kind) => {
    const spellings = definitionOf(kind).units.flatMap((unit) => unit.names);
    expect(spellings.filter((name, index) => spellings.indexOf(name) !== index)).toEqual([]);
  });

  it.each(kinds)('%s reads every spelling back as its own unit', (kind) => {
    for (const unit of definitionOf(kind).units) {
      for (const name of unit.names) {
        const written = 3;
        const expected = written * unit.factor + (unit.offset ?? 0);
        const { min, max } = definitionOf(kind);
        if (expected < min || expected > max) continue;
        expect(readQuantity(kind, `${written} ${name}`, { field: 'x' }).value, name).toBeCloseTo(expected, 9);
      }
    }
  });

  it.each(kinds)('%s has a canonical unit of factor one', (kind) => {
    const { canonical, units } = definitionOf(kind);
    expect(units.find((unit) => unit.symbol === canonical)?.factor).toBe(1);
  });
});
