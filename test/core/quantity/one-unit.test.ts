import { assert, constantFrom, double, property } from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromUnit, significant, toUnit } from '../../../core/quantity/format.ts';
import { oneUnit } from '../../../core/quantity/one-unit.ts';

// 1 US gal = 3.785411784 L, 1 in = 2.54 cm, °F = 1.8 °C + 32: NIST SP 811, 2008, appendix B.8.
describe('an amount in two units', () => {
  it.each([
    ['in 75 US gal (283.9 L), split', 'in 75 US gal, split'],
    ['75 US gal (283,9 L)', '75 US gal'],
    ['5 cm (2 in) apart', '5 cm apart'],
    ['4 cm (1.5 in)', '4 cm'],
    ['25 °C (77 °F)', '25 °C'],
    ['8 dKH (2.85 meq/L)', '8 dKH'],
    ['35 ppt (1.0264 SG)', '35 ppt'],
    ['1.026 SG (35 ppt)', '35 ppt'],
    ['10.2 cm (4 in) is not enough', '4 in is not enough'],
    ['283.9 L (75 US gal)', '75 US gal'],
  ])('%s', (text, shown) => expect(oneUnit(text)).toBe(shown));

  it.each([
    '20 L (10 %)',
    '20 L (2 US gal)',
    '20 L (40 L)',
    '25 °C (18 °C at night)',
    '3 g (2 days)',
    '2 US gal (common practice)',
    '5 cm (about the width of a hand)',
    '8 dKH (8 ppt)',
  ])('%s is not the same again', (text) => expect(oneUnit(text)).toBe(text));

  it('is told once, whatever the amount', () => {
    const pairs = [
      ['volume', 'US gal', 'L', 1, 2000],
      ['volume', 'L', 'US gal', 1, 2000],
      ['length', 'in', 'cm', 1, 200],
      ['temperature', '°C', '°F', 15, 35],
      ['alkalinity', 'dKH', 'meq/L', 1, 5],
    ] as const;
    assert(
      property(
        constantFrom(...pairs),
        double({ min: 0, max: 1, noNaN: true }),
        ([kind, one, other, low, high], share) => {
          const written = Number(significant(low + share * (high - low), 3));
          const again = significant(toUnit(kind, fromUnit(kind, written, one), other), 3);
          expect(oneUnit(`${written} ${one} (${again} ${other})`)).toMatch(/^[\d.]+ [^(]+$/);
        },
      ),
    );
  });
});
