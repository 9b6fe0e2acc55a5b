import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parameter } from '../../../core/water/parameter.ts';
import { dose } from '../dose/run.ts';
import { afterGuard, amountIn, planIn, sumOf } from './printed.ts';
import { limitsOf } from '../../../core/water/limits.ts';

/**
 * What a gram supplies, by hand from the IUPAC 2021 weights (H 1.008, C 12.011, N 14.007, O 15.999, Na 22.990,
 * Mg 24.305, P 30.974, S 32.06, Cl 35.45, K 39.098, Ca 40.078, Sr 87.62, Br 79.904, I 126.904): dKH x L for alkalinity
 * (28.0385 mg CaO a meq, 10 mg CaO per L a dKH: 2.80385), mg for the rest.
 */
const supply = [
  ['alkalinity', 'sodium bicarbonate', (1000 / 84.006) * 2.80385],
  ['alkalinity', 'sodium carbonate', (2000 / 105.988) * 2.80385],
  ['alkalinity', 'sodium carbonate decahydrate', (2000 / 286.138) * 2.80385],
  ['alkalinity', 'calcium hydroxide', (2000 / 74.092) * 2.80385],
  ['calcium', 'calcium chloride anhydrous', (1000 * 40.078) / 110.978],
  ['calcium', 'calcium chloride dihydrate', (1000 * 40.078) / 147.008],
  ['calcium', 'calcium chloride hexahydrate', (1000 * 40.078) / 219.068],
  ['magnesium', 'magnesium chloride hexahydrate', (1000 * 24.305) / 203.295],
  ['magnesium', 'magnesium sulfate heptahydrate', (1000 * 24.305) / 246.466],
  ['potassium', 'potassium chloride', (1000 * 39.098) / 74.548],
  ['nitrate', 'sodium nitrate', (1000 * 62.004) / 84.994],
  ['nitrate', 'potassium nitrate', (1000 * 62.004) / 101.102],
  ['phosphate', 'monosodium phosphate', (1000 * 94.97) / 119.976],
  ['phosphate', 'disodium phosphate', (1000 * 94.97) / 141.957],
  ['phosphate', 'monopotassium phosphate', (1000 * 94.97) / 136.084],
  ['strontium', 'strontium chloride hexahydrate', (1000 * 87.62) / 266.61],
  ['bromide', 'sodium bromide', (1000 * 79.904) / 102.894],
  ['iodine', 'potassium iodide', (1000 * 126.904) / 166.003],
] as const;

const asked = fc.record({
  salt: fc.constantFrom(...supply),
  from: fc.double({ min: 0, max: 1, noNaN: true }),
  share: fc.double({ min: 0.02, max: 1, noNaN: true }),
  litres: fc.double({ min: 1.2, max: 4, noNaN: true }).map((power) => Number((10 ** power).toPrecision(4))),
  purity: fc.constantFrom(100, 99, 98.5, 77, 50),
  pace: fc.option(fc.double({ min: 0.12, max: 1, noNaN: true }), { nil: undefined }),
});

describe('/dose amount, as printed', () => {
  it('adds up to the last digit, keeps to the printed pace and takes no day too many', () => {
    fc.assert(
      fc.property(asked, ({ salt, from, share, litres, purity, pace }) => {
        const [of, name, perG] = salt;
        const { unit, kitResolution } = parameter(of);
        const { believable: plausible, pace: usual } = limitsOf(of);
        const now = Number((plausible[0] + 0.6 * from * (plausible[1] - plausible[0])).toPrecision(4));
        const goal = Number((now + share * 0.4 * (plausible[1] - now)).toPrecision(4));
        const most = (usual?.up ?? Number.NaN) * (pace ?? 1);
        fc.pre(goal - now > kitResolution && goal - now < 60 * most);
        const { headline: whole, working } = dose('amount', {
          sure: 'yes',
          of,
          now: `${now} ${unit}`,
          goal: `${goal} ${unit}`,
          with: name,
          volume: `${litres} L`,
          purity: `${purity} %`,
          ...(pace === undefined ? {} : { pace: `${most.toFixed(6)} ${unit}` }),
        });
        const headline = afterGuard(whole);
        if (/too little to measure/.test(headline)) return;
        const riseOf = (grams: number): number => (grams * perG * (purity / 100)) / litres;
        const plan = planIn(
          headline.includes(' in all, ') ? headline.slice(headline.indexOf(' in all, ')) : headline,
        );
        const paceLine = working.find((line) => line.startsWith('Pace:')) ?? '';
        const printedPace = Number(/(?:at most|your) ([\d.]+) \S+ a day/.exec(paceLine)?.[1]);
        const total = amountIn(headline);
        expect(Math.abs(sumOf(plan.portions) - total)).toBeLessThan(plan.digit / 2);
        for (const portion of plan.portions)
          expect(riseOf(portion)).toBeLessThanOrEqual(printedPace * (1 + 3e-5));
        expect(plan.portions.at(-1)).toBeGreaterThan(0);
        expect(plan.portions.at(-1)).toBeLessThanOrEqual(plan.portions[0] ?? 0);
        // Never above what is missing, and short of it by no more than rounding down takes off.
        expect(riseOf(total)).toBeLessThanOrEqual((goal - now) * (1 + 3e-5));
        expect(riseOf(total / 0.995 + plan.digit * (plan.portions.length + 1))).toBeGreaterThan(goal - now);
        expect((plan.portions.length - 1) * printedPace).toBeLessThan((goal - now) * 1.003);
      }),
      { numRuns: 5000 },
    );
  }, 120_000);
});
