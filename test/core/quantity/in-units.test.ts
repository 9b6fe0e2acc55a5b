import { assert, constantFrom, double, property } from 'fast-check';
import { describe, expect, it } from 'vitest';
import { american, metric, type ChosenUnits } from '../../../core/quantity/chosen-units.ts';
import { fixed, fromUnit } from '../../../core/quantity/format.ts';
import { inUnits } from '../../../core/quantity/in-units.ts';

// 1 US gal = 3.785411784 L, 1 imp gal = 4.54609 L, 1 in = 2.54 cm, 1 ft = 30.48 cm, °F = 1.8 °C + 32: NIST SP 811,
// 2008, appendix B.8 and B.9.
describe('in gallons, inches and °F', () => {
  it.each([
    ['8.5 g in 378.5 L', '8.5 g in 100 US gal'],
    ['swap 29 L in all', 'swap 7.66 US gal in all'],
    ['keep 15 cm apart', 'keep 6 in apart'],
    ['10 to 15 cm of bare sand', '4 to 6 in of bare sand'],
    ['a box of 120 x 50 x 50 cm inside', 'a box of 47 x 20 x 20 in inside'],
    ['1.5 cm wide', '0.6 in wide'],
    ['a hose of 3 m', 'a hose of 10 ft'],
    ['usual 24 to 27 °C', 'usual 75 to 81 °F'],
    ['the water at 30.6 °C', 'the water at 87 °F'],
    ['at most 1 °C an hour', 'at most 1.8 °F an hour'],
    [
      'swings by 1.3 °C in a day, more than the usual 1 °C',
      'swings by 2.3 °F in a day, more than the usual 1.8 °F',
    ],
    ['then 0.5 to 1 °C a day', 'then 0.9 to 1.8 °F a day'],
    ['30.6 to 28 °C in 3 hours', '87 to 82.4 °F in 3 hours'],
    ['keep it at most 28 °C', 'keep it at most 82 °F'],
    ['stay within 24 to 27 °C', 'stay within 75 to 81 °F'],
    ['30 °C or higher', '86 °F or higher'],
    ['warm by 10 °C', 'warm by 18 °F'],
    ['crushed ice is 0 °C', 'crushed ice is 32 °F'],
    ['up to 40 cm in a tank', 'up to 16 inches in a tank'],
    ['below about 180 cm (6 ft)', 'below about 6 ft'],
    ['2 to 8 cm (1 to 3 in) a year', '1 to 3 in a year'],
    ['285 L (75 gal): 2,800 to 7,100 L/h (750 to 1,900 gph)', '75 gal: 750 to 1,900 gph'],
    ['cut 2 to 3 cm (about 1 in) below', 'cut 1 in below'],
    ['about 1 °C (2 °F) above', 'about 2 °F above'],
    ['24 to 27 °C (75 to 81 °F), water moving', '75 to 81 °F, water moving'],
    ['340.7 L (90 US gal)', '90 US gal'],
  ])('%s', (text, shown) => expect(inUnits(text, american)).toBe(shown));

  it.each([
    '0.713 g per litre, 250 mL, in 2 L of RO water',
    'amounts are per 100 L of water',
    '1 mL raises 100 L by 0.7 dKH',
    '10 to 20 cm/s',
    '420 mg/L',
    'an area of 20 cm²',
    '51 mS/cm',
    '5,000 L/h at 60 % is about 3,000',
    '1.0264 SG at 25 °C',
    'a probe that corrects to 25 °C shows 53 mS/cm',
    'in every 10 L that ran out',
    '0.5 mm',
    'specific gravity 20 °C / 20 °C',
    '79 °F is 26.11 °C.',
    '75 US gal is 283.9 L, 283906 mL, 0.284 m³.',
    'from 7.2 to 8.4 in 3 days',
    '8 dKH, pH 8.1',
  ])('%s stays', (text) => expect(inUnits(text, american)).toBe(text));
});

describe('in litres, cm and °C', () => {
  it.each([
    ['75 US gal (283.9 L)', '283.9 L'],
    ['2 to 3 cm (about 1 in)', '2 to 3 cm'],
    ['10.2 cm (4 in) is not enough', '10.2 cm is not enough'],
    ['about 1 °C (2 °F) above', 'about 1 °C above'],
    ['keep 15 cm apart in 400 L at 25 °C', 'keep 15 cm apart in 400 L at 25 °C'],
  ])('%s', (text, shown) => expect(inUnits(text, metric)).toBe(shown));
});

it('changes nothing but doubles where nothing is chosen', () =>
  expect(inUnits('15 cm, 400 L, 25 °C, 75 US gal (283.9 L)', {})).toBe('15 cm, 400 L, 25 °C, 75 US gal'));

describe('whatever the amount, what is shown', () => {
  const kinds = [
    { kind: 'length', from: 'cm', chosen: { length: 'in' }, most: 300, share: 0.02, step: 0.05 },
    { kind: 'volume', from: 'L', chosen: { volume: 'US gal' }, most: 5000, share: 0.01, step: 0.05 },
    { kind: 'volume', from: 'L', chosen: { volume: 'imp gal' }, most: 5000, share: 0.01, step: 0.05 },
    { kind: 'temperature', from: '°C', chosen: { temperature: '°F' }, most: 45, share: 0, step: 0.5 },
  ] as const satisfies readonly { chosen: ChosenUnits; [key: string]: unknown }[];

  it('is the same amount within 2 % of a length, 1 % of a volume, half a degree, or half of its last digit', () => {
    assert(
      property(constantFrom(...kinds), double({ min: 0.02, max: 1, noNaN: true }), (one, part) => {
        const { kind, from, chosen, most, share, step } = one;
        const given = fixed(kind === 'temperature' ? 7 + part * (most - 7) : part * most, 1);
        const [, number = '', unit = ''] =
          /^it is ([\d.]+) (.+)$/.exec(inUnits(`it is ${given} ${from}`, chosen)) ?? [];
        const scale = fromUnit(kind, 1, unit) - fromUnit(kind, 0, unit);
        const exact = (fromUnit(kind, Number(given), from) - fromUnit(kind, 0, unit)) / scale;
        const off = Math.abs(Number(number) - exact);
        const value = Number(number);
        const digits = kind === 'volume' && value >= 100 ? 0.5 : step;
        expect(off).toBeLessThanOrEqual(Math.max(share * exact, digits) * 1.001 + 1e-9);
      }),
      { numRuns: 2000 },
    );
  });

  it('is not converted twice', () => {
    assert(
      property(
        constantFrom(...kinds),
        double({ min: 0.1, max: 1, noNaN: true }),
        ({ from, chosen, most }, part) => {
          const once = inUnits(`about ${fixed(part * most, 1)} ${from} of it`, chosen);
          expect(inUnits(once, chosen)).toBe(once);
        },
      ),
    );
  });
});
