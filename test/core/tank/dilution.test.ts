import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findCompound, type Compound } from '../../../core/dosing/compound.ts';
import { riseFrom, supplyPerG } from '../../../core/dosing/dose.ts';
import { DKH_PER_MEQ_L } from '../../../core/quantity/unit.ts';
import { dilutionL } from '../../../core/tank/dilution.ts';
import { problemOf } from '../../commands/text.ts';

const dkh = (value: number): number => value / DKH_PER_MEQ_L;
const soda = findCompound('baking soda') as Compound;

describe('dilutionL', () => {
  it('20 g NaHCO3 (84.006 g/mol, 238.08 meq), 7.0 -> 8.1 dKH (10 mg CaO/L each): 606.9 L by hand', () => {
    const found = dilutionL({
      supplied: (20 / 84.006) * 1000,
      before: dkh(7),
      after: dkh(8.1),
      resolution: dkh(0.3),
    });
    expect(found.likely).toBeCloseTo(606.9, 0);
    expect(found.low).toBeCloseTo(476.8, 0);
    expect(found.high).toBeCloseTo(834.4, 0);
  });

  it('1 mg/L from 100 mg is 100 L', () => {
    expect(dilutionL({ supplied: 100, before: 4, after: 5, resolution: 0 })).toEqual({
      low: 100,
      likely: 100,
      high: 100,
    });
  });

  it('finds the volume a dose was put into', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 5000, noNaN: true }),
        fc.double({ min: 0.01, max: 0.5, noNaN: true }),
        (volumeL, gramsPerL) => {
          const massG = gramsPerL * volumeL;
          const rise = riseFrom(soda, 'alkalinity', massG, volumeL);
          const found = dilutionL({
            supplied: massG * supplyPerG(soda, 'alkalinity'),
            before: 2.5,
            after: 2.5 + rise,
            resolution: 0.05,
          });
          expect(found.likely / volumeL).toBeCloseTo(1, 6);
          expect(found.low).toBeLessThan(volumeL);
          expect(found.high).toBeGreaterThan(volumeL);
        },
      ),
    );
  });

  it.each([
    ['a fall', 8, 7],
    ['no rise', 7, 7],
    ['a rise the kit cannot tell from none', 7, 7.3],
  ])('refuses %s', (_, before, after) => {
    expect(
      problemOf(() =>
        dilutionL({ supplied: 200, before: dkh(before), after: dkh(after), resolution: dkh(0.3) }),
      ).field,
    ).toBe('dilution');
  });
});
