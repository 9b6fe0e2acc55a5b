import { describe, expect, it } from 'vitest';
import { oneMark } from '../../../core/quantity/marks.ts';

describe('oneMark', () => {
  it.each<{ texts: string[]; one: string[] }>([
    { texts: ['2,8 meq/L', '1.000 L'], one: ['2,8 meq/L', '1000 L'] },
    { texts: ['2,8', '1.350', '0,05'], one: ['2,8', '1350', '0,05'] },
    { texts: ['8,3 dKH', '1,350'], one: ['8,3 dKH', '1.350'] },
    { texts: ['8.3', '1,350'], one: ['8.3', '1350'] },
    { texts: ['8.3', '1,234,567 L'], one: ['8.3', '1234567 L'] },
    { texts: ['2,8 and 1.234.567 L'], one: ['2,8 and 1234567 L'] },
    // A gravity keeps its point beside a decimal comma.
    { texts: ['8,3 dKH', '1.025'], one: ['8,3 dKH', '1.025'] },
    { texts: ['8,3 dKH', '1.025 sg'], one: ['8,3 dKH', '1.025 sg'] },
    // Nothing shows the mark, or both do: left for the reader to ask or say.
    { texts: ['1.000 L'], one: ['1.000 L'] },
    { texts: ['1,350', '1.350'], one: ['1,350', '1.350'] },
    { texts: ['8.3', '8,3', '1.000 L'], one: ['8.3', '8,3', '1.000 L'] },
  ])('$texts', ({ texts, one }) => {
    expect(oneMark(texts)).toEqual(one);
  });
});
