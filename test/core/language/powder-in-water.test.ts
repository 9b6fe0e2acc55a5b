import { describe, expect, it } from 'vitest';
import { powderInWater } from '../../../core/language/powder-in-water.ts';
import { saidOf } from './said-of.ts';

describe('a powder and the water it goes into', () => {
  it('by two amounts, or by one of the unit', () => {
    const two = saidOf('kalk 2 tsp per 5 l', ['strength', 'nothing'], ['strength', 'nothing']);
    expect(powderInWater(two.scanned, two.said)).toEqual({ powder: '2 tsp', water: '5 l' });
    const one = saidOf('1 teaspoon of kalk per gallon', ['strength', 'substance']);
    expect(powderInWater(one.scanned, one.said)).toEqual({ powder: '1 teaspoon', water: '1 gal' });
  });

  it('is none where the water was not said', () => {
    const alone = saidOf('2 tsp of kalk', ['amount', 'substance']);
    expect(powderInWater(alone.scanned, alone.said)).toBeUndefined();
  });
});
