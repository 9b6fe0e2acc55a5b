import { describe, expect, it } from 'vitest';
import { answerTo } from '../said-answer.ts';

describe('a solution made again', () => {
  // 80 g in a litre are 160 g in 2 L; Na2CO3 is 52.99 g/eq (IUPAC 2021), so 1.51 meq per mL.
  it('is weighed for the vessel by the strength that was written', () => {
    const text = 'his notes say ash [80](none substance)/1, how do i make up [2 litres](amount) of the same';
    const { headline, facts } = answerTo('solution', text);
    expect(headline).toMatch(/^160 g in 2 L is 80 g of sodium carbonate per litre/);
    expect(facts).toContainEqual({ label: 'Each mL holds', value: '1.51 meq' });
  });

  it('is judged against what dissolves, where it is lime', () => {
    const text =
      'kalk in the ato, evaporates [3 l](rate water) a day, [2 tsp](strength) per [5 l](strength) too strong?';
    expect(answerTo('limewater', text).headline).toMatch(/^Not too strong: 2 tsp in 5 L/);
  });
});
