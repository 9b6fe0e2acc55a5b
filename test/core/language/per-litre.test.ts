import { describe, expect, it } from 'vitest';
import { withPerLitre } from '../../../core/language/per-litre.ts';
import { saidOf } from './said-of.ts';

const read = (given: ReturnType<typeof saidOf>): readonly string[] =>
  withPerLitre(given.scanned, given.said).map(({ part, text }) => `${part} ${text}`);

describe('a strength written without its unit', () => {
  it('is grams in a litre behind the name of a powder', () => {
    expect(read(saidOf('soda ash 80/1', ['none', 'substance']))).toEqual(['strength 80 g/l']);
    expect(
      read(saidOf('soda ash 80:1, 3 litres', ['none', 'nothing'], ['none', 'nothing'], ['part', 'stock'])),
    ).toEqual(['strength 80 g/l', 'part 3 litres']);
  });

  it('is so too where it was read as a strength', () => {
    expect(read(saidOf('80 to the litre of soda ash', ['strength', 'nothing']))).toEqual(['strength 80 g/l']);
  });

  it('is none in a ratio of two levels', () => {
    expect(read(saidOf('nitrate to phosphate 100:1', ['now', 'nitrate'], ['now', 'phosphate']))).toEqual([
      'now 100',
      'now 1',
    ]);
  });
});
