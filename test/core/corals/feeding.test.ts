import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { feedingAdds, foods, type Food } from '../../../core/corals/feeding.ts';
import { Problem } from '../../../core/problem.ts';
import { real } from './real.ts';

const pure = {
  dry: { low: 1, high: 1 },
  proteinOfDry: { low: 1, high: 1 },
  phosphorusOfDry: { low: 0, high: 0 },
};

describe('feedingAdds', () => {
  // Protein / 6.25 is nitrogen (common practice of food analysis); NO3 / N = 62.004 / 14.007 (IUPAC 2021).
  it('1 g of protein is 0.16 g of nitrogen and 0.708 g of nitrate', () => {
    const added = feedingAdds(1, 1, pure);
    expect(added.nitrogenMg.low).toBeCloseTo(160, 9);
    expect(added.nitrateMgL.low).toBeCloseTo(708.26, 1);
    expect(added.nitrateMgL.high).toBe(added.nitrateMgL.low);
  });

  // PO4 / P = 94.970 / 30.974 (IUPAC 2021).
  it('1 g of phosphorus is 3.066 g of phosphate', () => {
    const added = feedingAdds(1, 1, {
      ...pure,
      proteinOfDry: { low: 0, high: 0 },
      phosphorusOfDry: { low: 1, high: 1 },
    });
    expect(added.phosphateMgL.high).toBeCloseTo(3066.1, 1);
    expect(added.nitrateMgL.high).toBe(0);
  });

  it('a gram of flake from its label into 100 L', () => {
    // By hand: 1000 mg x 0.94 x 0.45 = 423 mg protein, / 6.25 = 67.68 mg N, x 4.4266 = 299.6 mg NO3, / 100 L.
    const label = {
      dry: { low: 0.94, high: 0.94 },
      proteinOfDry: { low: 0.45, high: 0.45 },
      phosphorusOfDry: { low: 0.01, high: 0.01 },
    };
    const added = feedingAdds(1, 100, label);
    expect(added.nitrateMgL.high).toBeCloseTo(2.996, 3);
    // 9.4 mg P x 3.0661 / 100 L.
    expect(added.phosphateMgL.high).toBeCloseTo(0.2882, 4);
    expect(added.basis).not.toContain('from memory');
  });

  it('keeps named foods marked as memory, and says an upper bound is no reading', () => {
    for (const food of Object.keys(foods) as Food[]) {
      const added = feedingAdds(2, 200, food);
      expect(added.basis).toContain('from memory');
      expect(added.doubt).toContain('not a reading');
      expect(added.nitrateMgL.low).toBeLessThan(added.nitrateMgL.high);
      expect(added.phosphateMgL.low).toBeLessThan(added.phosphateMgL.high);
    }
    expect(feedingAdds(1, 100, 'frozen').nitrateMgL.high).toBeLessThan(
      feedingAdds(1, 100, 'flake').nitrateMgL.low,
    );
  });

  it('goes with the mass and against the volume', () => {
    const grams = real(0.01, 100);
    fc.assert(
      fc.property(grams, real(10, 5000), (massG, volumeL) => {
        const once = feedingAdds(massG, volumeL, 'pellet').nitrateMgL.high;
        expect(feedingAdds(2 * massG, volumeL, 'pellet').nitrateMgL.high).toBeCloseTo(2 * once, 6);
        expect(feedingAdds(massG, 2 * volumeL, 'pellet').nitrateMgL.high).toBeCloseTo(once / 2, 6);
      }),
    );
  });

  it('refuses shares that are none', () => {
    expect(() => feedingAdds(0, 100, 'flake')).toThrow(Problem);
    expect(() => feedingAdds(1, 100, { ...pure, dry: { low: 0.9, high: 1.2 } })).toThrow(Problem);
    expect(() => feedingAdds(1, 100, { ...pure, dry: { low: 0.9, high: 0.5 } })).toThrow(Problem);
  });
});
