import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compounds } from '../../../core/dosing/compound.ts';
import { parameter } from '../../../core/water/parameter.ts';
import { dose } from '../dose/run.ts';
import { amountIn, planIn, sumOf } from './printed.ts';
import { limitsOf } from '../../../core/water/limits.ts';

/** g of powder that a litre of water takes up at 20 °C (CRC Handbook, from memory; lime: Bates et al. 1956). */
const most: Readonly<Record<string, number>> = {
  'sodium bicarbonate': 96,
  'sodium carbonate': 215,
  'sodium carbonate monohydrate': 261,
  'sodium carbonate decahydrate': 580,
  'calcium chloride anhydrous': 745,
  'calcium chloride dihydrate': 987,
  'calcium chloride hexahydrate': 1471,
  'calcium hydroxide': 1.51,
  'magnesium chloride hexahydrate': 1166,
  'magnesium sulfate heptahydrate': 690,
  'potassium chloride': 340,
  'sodium nitrate': 876,
  'potassium nitrate': 316,
  'monosodium phosphate': 869,
  'disodium phosphate': 78,
  'monopotassium phosphate': 226,
  'strontium chloride hexahydrate': 890,
  'sodium bromide': 908,
  'potassium iodide': 1440,
};

const asked = fc.record({
  compound: fc.constantFrom(...compounds),
  grams: fc.double({ min: -1, max: 4, noNaN: true }).map((power) => Number((10 ** power).toPrecision(3))),
  litres: fc.double({ min: -1, max: 1.5, noNaN: true }).map((power) => Number((10 ** power).toPrecision(3))),
  share: fc.double({ min: 0.2, max: 5, noNaN: true }),
});

describe('/dose solution, as printed', () => {
  it('is never stronger than what dissolves; its millilitres add up and keep to the pace', () => {
    fc.assert(
      fc.property(asked, ({ compound, grams, litres, share }) => {
        const [of] = compound.raises;
        if (of === undefined) throw new Error(compound.name);
        const { unit } = parameter(of);
        const { pace } = limitsOf(of);
        const rise = Number((share * (pace?.up ?? 0)).toPrecision(3));
        const { headline, facts } = dose('solution', {
          with: compound.name,
          amount: `${grams} g`,
          volume: `${litres} L`,
          goal: `+${rise} ${unit}`,
        });
        const told = [headline, ...facts.map(({ label, value }) => `${label}: ${value}`)].join(' ');
        const gL = Number(/([\d.]+) g of [^:.]* per litre: each mL/.exec(told)?.[1]);
        expect(gL).toBeLessThanOrEqual(most[compound.name] ?? 0);
        const weigh = /with ([\d.]+ (?:mg|kg|g)) in/.exec(told)?.[1];
        if (weigh === undefined) expect(gL / (grams / litres)).toBeCloseTo(1, 3);
        else expect(amountIn(weigh) / litres).toBeLessThanOrEqual(gL * (1 + 1e-6));
        // "each mL ... raises 100 L by x": the rise of one mL, to its three figures.
        const aMl = Number(/raises 100 L by ([\d.]+)/.exec(told)?.[1]);
        const value = facts.find(({ label }) => label.startsWith('Per 100 L'))?.value ?? '';
        if (/make it (?:weaker|stronger)/.test(value)) return;
        const plan = planIn(value.replace(/^.* in all, /, ''));
        const total = / in all, /.test(value) ? amountIn(value) : sumOf(plan.portions);
        expect(Math.abs(sumOf(plan.portions) - total)).toBeLessThan(plan.digit / 2);
        for (const portion of plan.portions)
          expect(portion * 1000 * aMl).toBeLessThanOrEqual((pace?.up ?? 0) * 1.006);
        expect(total * 1000 * aMl).toBeLessThanOrEqual(rise * 1.006);
        expect((total + plan.digit * (plan.portions.length + 1)) * 1000 * aMl).toBeGreaterThan(rise * 0.989);
      }),
      { numRuns: 5000 },
    );
  }, 60_000);
});
