import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dose, fact } from '../dose/run.ts';
import { amountIn } from './printed.ts';

const asked = fc.record({
  tank: fc.double({ min: 1.3, max: 3.7, noNaN: true }).map((power) => Number((10 ** power).toPrecision(4))),
  part: fc.double({ min: 0.004, max: 0.099, noNaN: true }),
  use: fc.double({ min: 0.05, max: 2.5, noNaN: true }).map((dkh) => Number(dkh.toFixed(2))),
});

/** Bates et al. 1956: 0.0203 mol/L of 74.092 g/mol at 25 °C; 2 eq a mol, 2.80385 dKH a meq/L. */
const FULL_GL = 0.0203 * 74.092;
const G_PER_DKH_L = 74.092 / 2000 / 2.80385;

describe('/dose limewater, as printed', () => {
  it('never holds more than dissolves, brings no more than is used, and its parts make the top-off', () => {
    fc.assert(
      fc.property(asked, ({ tank, part, use }) => {
        const topOff = Number((tank * part).toPrecision(3));
        fc.pre(topOff < 0.0999 * tank && use < 2.5);
        const answer = dose('limewater', { amount: `${topOff} L`, volume: `${tank} L`, goal: `${use} dKH` });
        if (answer.headline.startsWith('No:')) {
          // What saturated limewater can bring is less than the use.
          expect((FULL_GL * topOff) / (G_PER_DKH_L * tank)).toBeLessThan(use * 1.0001);
          return;
        }
        const grams = amountIn(answer.headline);
        const perLitre = Number(/([\d.]+) g per litre of top-off/.exec(answer.headline)?.[1]);
        expect(grams).toBeLessThanOrEqual(use * tank * G_PER_DKH_L * 1.0001);
        expect(grams).toBeGreaterThan(use * tank * G_PER_DKH_L * 0.89);
        expect(perLitre).toBeLessThanOrEqual(FULL_GL * 1.0001);
        expect(perLitre * topOff).toBeLessThanOrEqual(use * tank * G_PER_DKH_L * 1.0001);
        expect(perLitre * topOff).toBeGreaterThan(use * tank * G_PER_DKH_L * 0.989);
        const [saturated = '', plain = ''] = (fact(answer, 'Or as saturated limewater') ?? '').split(
          ' of it with ',
        );
        expect(amountIn(saturated) + amountIn(plain)).toBeCloseTo(topOff, 6);
        expect(amountIn(saturated) * FULL_GL).toBeLessThanOrEqual(use * tank * G_PER_DKH_L * 1.0001);
      }),
      { numRuns: 5000 },
    );
  }, 120_000);
});
