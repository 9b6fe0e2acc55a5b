import { describe, expect, it } from 'vitest';
import { type Compound, findCompound } from '../../../core/dosing/compound.ts';
import { solutionMl, stockFor, strengthGL, suppliedPerMl } from '../../../core/dosing/solution.ts';
import { Problem } from '../../../core/problem.ts';

function salt(name: string): Compound {
  const found = findCompound(name);
  if (found === undefined || !('name' in found)) throw new Error(name);
  return found;
}

describe('stock solutions', () => {
  it('a molar solution (definition, SI) of bicarbonate gives 1 meq per mL, of carbonate 2', () => {
    expect(suppliedPerMl(salt('baking soda'), 'alkalinity', 84.0058)).toBeCloseTo(1, 5);
    expect(suppliedPerMl(salt('soda ash'), 'alkalinity', 105.9875)).toBeCloseTo(2, 5);
  });

  it('10 g/L of sodium nitrate holds 7.295 mg nitrate per mL (72.95 % by mass)', () => {
    expect(suppliedPerMl(salt('sodium nitrate'), 'nitrate', 10)).toBeCloseTo(7.295, 3);
    expect(suppliedPerMl(salt('sodium nitrate'), 'nitrate', 10, 0.5)).toBeCloseTo(3.648, 3);
  });

  it('strength and millilitres undo each other', () => {
    expect(strengthGL(80, 0.5)).toBe(160);
    expect(solutionMl(80, strengthGL(80, 0.5))).toBeCloseTo(500, 9);
  });

  it('a mass too small to weigh becomes at least 1 mL', () => {
    expect(stockFor(0.0086)).toEqual({ gramsPerLitre: 1, doseMl: expect.closeTo(8.6, 9) as number });
    expect(stockFor(0.0004).gramsPerLitre).toBe(0.1);
    expect(stockFor(0.0004).doseMl).toBeCloseTo(4, 9);
  });

  it('refuses an empty bottle', () => {
    expect(() => strengthGL(80, 0)).toThrow(Problem);
    expect(() => solutionMl(1, 0)).toThrow(Problem);
  });
});
