import { describe, expect, it } from 'vitest';
import { dose } from './run.ts';

/** About 1.5 to 1.7 g of Ca(OH)2 dissolve in a litre at 25 °C; a level teaspoon is 2.5 to 3.5 g (common practice, no source). */
describe('/dose limewater with a powder', () => {
  it.each([
    // 2 x 2.5 / 5 = 1 and 2 x 3.5 / 5 = 1.4
    ['2 tsp', '5 L', /^Not too strong: 2 tsp in 5 L is roughly 1 to 1\.4 g per litre/],
    // 3 x 2.5 / 3.785 = 2 and 3 x 3.5 / 3.785 = 2.8
    ['3 tsp', '1 us gal', /^More than dissolves: .* 2 to 2\.8 g per litre/],
    ['8 g', '5 L', /^As strong as it gets: 8 g in 5 L is 1\.6 g per litre/],
  ])('%s in %s', (powder, per, headline) => {
    expect(dose('limewater', { amount: per, powder, per }).headline).toMatch(headline);
  });
});
