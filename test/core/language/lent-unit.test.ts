import { describe, expect, it } from 'vitest';
import { withLentUnit } from '../../../core/language/lent-unit.ts';

describe('a bare volume', () => {
  it('is in the unit of the tank', () =>
    expect(withLentUnit({ volume: '30 gal', changed: '10', container: '5', batches: ['10', '2 l'] })).toEqual(
      {
        volume: '30 gal',
        changed: '10 gal',
        container: '5 gal',
        batches: ['10 gal', '2 l'],
      },
    ));

  it('keeps its own unit, and stays bare where the tank has none', () => {
    expect(withLentUnit({ volume: '30 gal', changed: '40 l' }).changed).toBe('40 l');
    expect(withLentUnit({ volume: '30', changed: '10' }).changed).toBe('10');
    expect(withLentUnit({ changed: '10' }).changed).toBe('10');
  });
});
