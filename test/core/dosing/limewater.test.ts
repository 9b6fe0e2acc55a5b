import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { capacity, LIME_G_PER_MEQ, recipe, saturationGL } from '../../../core/dosing/limewater.ts';
import { Problem } from '../../../core/problem.ts';
import { dkhFromMeqL, meqLFromDkh } from '../../../core/water/alkalinity.ts';

/** Published or remembered solubilities that the band has to hold, g/L of Ca(OH)2. */
const values = [
  { tempC: 25, gL: 1.5041, source: 'Bates, Bower & Smith 1956: 0.0203 mol/L' },
  { tempC: 0, gL: 1.8497, source: 'solubility table 04-26: 0.185 g per 100 g water' },
  { tempC: 20, gL: 1.647, source: 'solubility table 04-26: 0.165 g per 100 g water' },
  { tempC: 40, gL: 1.399, source: 'solubility table 04-26: 0.141 g per 100 g water' },
  { tempC: 10, gL: 1.8195, source: "Lange's Handbook, from memory" },
  { tempC: 30, gL: 1.593, source: "Lange's Handbook, from memory" },
];

describe('saturationGL', () => {
  it.each(values)('holds $gL g/L at $tempC deg C ($source)', ({ tempC, gL }) => {
    const { low, high } = saturationGL(tempC);
    expect(low).toBeLessThanOrEqual(gL + 1e-4);
    expect(high).toBeGreaterThanOrEqual(gL - 1e-4);
    expect(high / low).toBeLessThan(1.12);
  });

  it('falls as the water warms', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 39, noNaN: true }),
        fc.double({ min: 0.01, max: 1, noNaN: true }),
        (tempC, step) => {
          expect(saturationGL(tempC + step).low).toBeLessThan(saturationGL(tempC).low);
          expect(saturationGL(tempC + step).high).toBeLessThan(saturationGL(tempC).high);
        },
      ),
    );
  });

  it.each([-1, 41, Number.NaN])('refuses %d deg C', (tempC) => {
    expect(() => saturationGL(tempC)).toThrow(Problem);
  });
});

describe('capacity', () => {
  it('1 L at 0.0203 mol/L into 100 L: 0.406 meq/L, 1.138 dKH, 8.14 mg/L Ca (Bates 1956, stoichiometry)', () => {
    const full = capacity(1, 0.0203 * 74.092, 100);
    expect(full.alkMeqL).toBeCloseTo(0.406, 4);
    expect(dkhFromMeqL(full.alkMeqL)).toBeCloseTo(1.138, 3);
    expect(full.calciumMgL).toBeCloseTo(8.14, 2);
  });

  it('a US gallon a day in 90 US gal: 154 meq, 1.27 dKH, 9.1 mg/L Ca, within 2 %', () => {
    const full = capacity(3.785412, saturationGL(25).low, 340.687);
    expect(full.meq / 154).toBeCloseTo(1, 1);
    expect(Math.abs(full.meq - 154)).toBeLessThan(1);
    expect(Math.abs(dkhFromMeqL(full.alkMeqL) - 1.27)).toBeLessThan(0.02);
    expect(Math.abs(full.calciumMgL - 9.1)).toBeLessThan(0.1);
  });
});

describe('recipe', () => {
  it('0.6 dKH a day in 340.7 L with 3.785 L of top-off: 72.9 meq, 2.70 g, 0.71 g/L, 1.79 L saturated', () => {
    const lime = recipe(meqLFromDkh(0.6), 340.687, 3.785412, saturationGL(25).low);
    expect(lime.needMeq).toBeCloseTo(72.9, 1);
    expect(lime.limeG).toBeCloseTo(2.7, 2);
    expect(lime.perLitreG).toBeCloseTo(0.71, 2);
    expect(Math.abs(lime.saturatedL - 1.79)).toBeLessThan(0.02);
    expect(lime.saturatedL + lime.plainL).toBeCloseTo(3.785412, 6);
    expect(lime.ofSaturation).toBeLessThan(0.5);
  });

  it('weighs 74.092 g per 2 eq', () => {
    expect(LIME_G_PER_MEQ).toBeCloseTo(0.037046, 6);
  });

  it('refuses more top-off than evaporates, and a use no tank has', () => {
    expect(() => recipe(0.2, 100, 250, 1.5)).toThrow(/more than the whole tank/);
    expect(() => recipe(0.2, 100, 11, 1.5)).toThrow(/11 % of the tank/);
    expect(() => recipe(2.1, 100, 2, 1.5)).toThrow(Problem);
  });

  it('what it weighs in gives back the use', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 2, noNaN: true }),
        fc.double({ min: 10, max: 5000, noNaN: true }),
        fc.double({ min: 0.005, max: 0.1, noNaN: true }),
        (use, tankL, part) => {
          const topOffL = part * tankL * (1 - 1e-9);
          const lime = recipe(use, tankL, topOffL, 1.5);
          expect(capacity(topOffL, lime.perLitreG, tankL).alkMeqL / use).toBeCloseTo(1, 9);
          expect(lime.plainL).toBeGreaterThanOrEqual(0);
        },
      ),
    );
  });
});
