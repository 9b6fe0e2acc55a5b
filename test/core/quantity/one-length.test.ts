import { describe, expect, it } from 'vitest';
import { readQuantity } from '../../../core/quantity/read.ts';
import { problemOf } from '../../commands/text.ts';

const read = (text: string) => readQuantity('length', text, { field: 'size' });

describe('a length', () => {
  it.each([
    ['12 x 30 x 20 cm', ['12 cm', '30 cm', '20 cm']],
    ['10 × 5 in', ['10 in', '5 in']],
    ['12cm x 30cm', ['12cm', '30cm']],
    ['3 * 4 cm', ['3 cm', '4 cm']],
    ['3 (4 cm)', []],
    ['12 cm 30 cm', []],
    ['10 cm 5', []],
  ])('is not made of %s, which is asked back', (text, choices) => {
    const problem = problemOf(() => read(text));
    expect(problem.message).toMatch(/more than one length/);
    expect(problem.choices).toEqual(choices);
    for (const choice of problem.choices) expect(read(choice).value).toBeGreaterThan(0);
  });

  // One inch is 2.54 cm exactly (international yard, 1959).
  it.each([
    ['10 cm + 2 cm', 12],
    ['30 cm - 4 mm', 29.6],
    ['30 cm / 2', 15],
    ['2 in', 5.08],
  ])('may be worked out: %s', (text, cm) => expect(read(text).value).toBeCloseTo(cm, 9));
});
