import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ask } from '../../ask.ts';
import { Problem } from '../../../core/problem.ts';
import { afterGuard, amountIn, planIn, sumOf } from './printed.ts';

const context = { nowMs: 0 };

const asked = fc.record({
  salt: fc.constantFrom(
    // dKH x L or mg that a gram supplies, by hand from the IUPAC 2021 weights.
    { words: 'soda ash', of: 'alk', perG: (2000 / 105.988) * 2.80385, low: 6, most: 1, digits: 1, span: 4 },
    { words: 'baking soda', of: 'kh', perG: (1000 / 84.006) * 2.80385, low: 6, most: 1, digits: 1, span: 4 },
    {
      words: 'calcium chloride dihydrate',
      of: 'calcium',
      perG: 40_078 / 147.008,
      low: 330,
      most: 50,
      digits: 0,
      span: 100,
    },
    {
      words: 'epsom salt',
      of: 'magnesium',
      perG: 24_305 / 246.466,
      low: 1050,
      most: 100,
      digits: 0,
      span: 300,
    },
  ),
  from: fc.double({ min: 0, max: 0.4, noNaN: true }),
  by: fc.double({ min: 0.15, max: 0.6, noNaN: true }),
  litres: fc.integer({ min: 30, max: 3000 }),
});

describe('a dose asked in plain words, as printed', () => {
  it('adds up and keeps to the usual pace', () => {
    fc.assert(
      fc.property(asked, ({ salt, from, by, litres }) => {
        const now = (salt.low + from * salt.span).toFixed(salt.digits);
        const goal = (Number(now) + by * salt.span).toFixed(salt.digits);
        const unit = salt.digits === 1 ? 'dkh' : 'ppm';
        let headline;
        try {
          ({ headline } = ask(
            `raise ${salt.of} from ${now} ${unit} to ${goal} ${unit} in ${litres} L with ${salt.words}`,
            context,
            { as: 'dose-amount' },
          ));
        } catch (error) {
          expect(error).toBeInstanceOf(Problem);
          return;
        }
        headline = afterGuard(headline);
        if (!/^[\d.]+ (?:k?g|mg) of /.test(headline)) return;
        const total = amountIn(headline);
        const plan = planIn(
          headline.includes(' in all, ') ? headline.slice(headline.indexOf(' in all, ')) : headline,
        );
        expect(Math.abs(sumOf(plan.portions) - total)).toBeLessThan(plan.digit / 2);
        for (const portion of plan.portions)
          expect((portion * salt.perG) / litres).toBeLessThanOrEqual(salt.most * (1 + 3e-5));
        const rise = Number(goal) - Number(now);
        expect((total * salt.perG) / litres).toBeLessThanOrEqual(rise * (1 + 3e-5));
        expect((total * salt.perG) / litres).toBeGreaterThan(rise * 0.97 - 1e-9);
        counted++;
      }),
      { numRuns: 5000 },
    );
    expect(counted).toBeGreaterThan(4000);
  }, 180_000);
});

let counted = 0;
