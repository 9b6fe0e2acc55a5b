import { describe, expect, it } from 'vitest';
import { typedUnits } from '../../../core/language/typed-units.ts';

function named(text: string): Readonly<Record<string, readonly string[]>> {
  const all = Object.entries(typedUnits(text).named).map(([kind, units]) => [kind, [...units]] as const);
  return Object.fromEntries(all.filter(([, units]) => units.length > 0));
}

describe('the units somebody thinks in', () => {
  it.each([
    ['75 gal, alk 7', { volume: ['US gal'] }],
    ['seventy five gallons', { volume: ['US gal'] }],
    ['80 imperial gallons', { volume: ['imp gal'] }],
    ['90x45x50 how many litres really', { volume: ['L'] }],
    ['120 x 50 x 50 cm', { length: ['cm'] }],
    ['36" x 18" x 18"', { length: ['in'] }],
    ['4ft tank', { length: ['in'] }],
    ['78 F tonight', { temperature: ['°F'] }],
    ['25C', { temperature: ['°C'] }],
    ['79 f in celsius', { temperature: ['°F', '°C'] }],
    ['alk 2.4 meq', { alkalinity: ['meq/L'] }],
    ['dkh 8.1', {}],
    ['5 gallon bucket, 20 l', { volume: ['US gal', 'L'] }],
    ['glass 10 mm', {}],
    ['5 ml in the cup', {}],
    ['1.5 g per litre', {}],
    ['tank reads 87', {}],
  ])('%s', (text, units) => expect(named(text)).toEqual(units));

  it('leaves a number without a unit for what reads it', () =>
    expect(typedUnits('tank reads 87, 75g').bare).toEqual([87]));
});
