import { describe, expect, it } from 'vitest';
import { afterEvaporation, goneUntil } from '../../../core/change/evaporation.ts';
import { Problem } from '../../../core/problem.ts';

/**
 * Salt is conserved: 400 L at S 35 weigh 400 x 1.02334 kg (UNESCO 1983, EOS-80, 25 °C) and hold 35 g/kg of salt; 16 L of
 * fresh water weigh 16 x 0.99705 kg. 35 x 409.336 / (409.336 - 15.953) = 36.419.
 */
describe('evaporation', () => {
  it.each([
    { s: 35, gone: 16 / 400, expected: 36.419 },
    { s: 35, gone: 0, expected: 35 },
    // 35 x 409.336 / (409.336 - 100 x 0.99705): a quarter of the water gone.
    { s: 35, gone: 0.25, expected: (35 * 409.336) / (409.336 - 99.705) },
  ])('$s ppt less $gone of the water is $expected ppt', ({ s, gone, expected }) =>
    expect(afterEvaporation(s, gone)).toBeCloseTo(expected, 2),
  );

  it('goes round', () => {
    for (const to of [35.5, 37, 41]) expect(afterEvaporation(35, goneUntil(35, to))).toBeCloseTo(to, 9);
  });

  it('is for a tank that has water left', () => expect(() => afterEvaporation(35, 0.6)).toThrow(Problem));
});
