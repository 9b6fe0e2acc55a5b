import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  afterContinuous,
  continuousEqualToBatch,
  continuousForGoal,
  fractionOfContinuous,
} from '../../../core/change/continuous.ts';
import { afterChanges } from '../../../core/change/exchange.ts';
import { Problem } from '../../../core/problem.ts';

const source = 'mass balance of a stirred tank: cs + (c0 - cs) exp(-V/Vt)';

const table = [
  {
    what: '80 L through 400 L at 40',
    got: () => afterContinuous(40, 0, 80 / 400),
    expected: 32.74923,
    source,
  },
  {
    what: 'litres that equal 20 % of 400 L',
    got: () => 400 * continuousEqualToBatch(0.2),
    expected: 89.25742,
    source,
  },
  {
    what: 'litres for 40 to 10 in 400 L',
    got: () => 400 * (continuousForGoal({ now: 40, goal: 10, fresh: 0 }) ?? Number.NaN),
    expected: 554.51774,
    source,
  },
  {
    what: '30 % passed takes out',
    got: () => fractionOfContinuous(0.3),
    expected: 0.25918,
    source: '1 - e^-0.3',
  },
  { what: 'to equal 30 %', got: () => continuousEqualToBatch(0.3), expected: 0.35667, source: '-ln 0.7' },
];

describe('continuous exchange', () => {
  it.each(table)('$what -> $expected', ({ got, expected }) => {
    expect(Math.abs(got() - expected)).toBeLessThan(1e-5);
  });

  it('a batch always beats the same volume passed continuously', () => {
    const share = fc.double({ min: 0.01, max: 0.99, noNaN: true });
    const level = fc.double({ min: 0.1, max: 500, noNaN: true });
    fc.assert(
      fc.property(level, share, (now, fraction) => {
        expect(afterChanges({ now, fresh: 0, fraction })).toBeLessThan(afterContinuous(now, 0, fraction));
        expect(fractionOfContinuous(continuousEqualToBatch(fraction))).toBeCloseTo(fraction, 10);
      }),
    );
  });

  it('passing the volume for a goal gives the goal, up or down', () => {
    const level = fc.double({ min: 0.1, max: 500, noNaN: true });
    fc.assert(
      fc.property(level, level, fc.double({ min: 0.05, max: 0.95, noNaN: true }), (now, fresh, part) => {
        fc.pre(Math.abs(now - fresh) > 1e-3);
        const goal = now + (fresh - now) * part;
        const turnover = continuousForGoal({ now, goal, fresh });
        expect(turnover === undefined ? Number.NaN : afterContinuous(now, fresh, turnover)).toBeCloseTo(
          goal,
          6,
        );
      }),
    );
  });

  it('says undefined for the level of the new water itself and beyond it', () => {
    expect(continuousForGoal({ now: 40, goal: 5, fresh: 5 })).toBeUndefined();
    expect(continuousForGoal({ now: 40, goal: 2, fresh: 5 })).toBeUndefined();
    expect(continuousForGoal({ now: 40, goal: 50, fresh: 5 })).toBeUndefined();
    expect(continuousForGoal({ now: 40, goal: 40, fresh: 5 })).toBe(0);
  });

  it.each([-0.1, Number.NaN, 101])('refuses a turnover of %s', (turnover) => {
    expect(() => afterContinuous(1, 0, turnover)).toThrow(Problem);
  });

  it('refuses a batch of everything', () => {
    expect(() => continuousEqualToBatch(1)).toThrow(Problem);
  });
});
