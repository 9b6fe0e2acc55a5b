import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tellingName } from '../../../commands/coral/asked-kind.ts';
import { feedCommand } from '../../../commands/coral/feed.ts';
import { corals } from '../../../core/corals/coral-list.ts';
import { problemOf, textOf } from '../text.ts';
import { twoPersons } from './person.ts';
import { rendered } from './rendered.ts';

const feed = (input: Record<string, string>) =>
  feedCommand.run({ food: 'flake', mass: '1 g', ...input }, { nowMs: 0 });

/** "At most 6 mg/L nitrate and 0.54 mg/L phosphate". */
function most(headline: string): readonly number[] {
  const [, nitrate, phosphate] =
    /At most ([\d.]+) mg\/L nitrate and ([\d.]+) mg\/L phosphate/.exec(headline) ?? [];
  return [Number(nitrate), Number(phosphate)];
}

describe('the most a feeding adds', () => {
  // Nitrogen of protein 16 % (protein / 6.25, from memory of food analysis); NO3/N 62.004/14.007 = 4.4266 and PO4/P
  // 94.970/30.974 = 3.0661 (IUPAC 2021 weights).
  it.each([
    // 5 g of 48 % protein: 384 mg N, 1700 mg NO3; 1 % phosphorus: 50 mg P, 153 mg PO4.
    [{ mass: '5 g', protein: '48 %', phosphorus: '1 %', volume: '283.9 L' }, 5.99, 0.54],
    // 1 g of protein alone holds 0.16 g N, 0.708 g NO3.
    [{ mass: '2 g', protein: '50 %', phosphorus: '2 %', volume: '100 L' }, 7.08, 1.226],
    [{ mass: '2 g', protein: '50 %', phosphorus: '2 %', volume: '200 L' }, 3.54, 0.613],
  ])('%j', (input, nitrate, phosphate) => {
    const [no3 = 0, po4 = 0] = most(feed(input).headline);
    expect(Math.abs(no3 / nitrate - 1)).toBeLessThan(0.02);
    expect(Math.abs(po4 / phosphate - 1)).toBeLessThan(0.02);
  });

  it('is per 100 L where no volume is given, and says so', () => {
    expect(feed({ protein: '50 %', phosphorus: '1 %' }).headline).toMatch(/per 100 L: an upper bound/);
  });

  it('goes with the mass and against the volume', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 90 }), fc.integer({ min: 1, max: 50 }), (protein, grams) => {
        const one =
          most(feed({ mass: `${grams} g`, protein: `${protein} %`, volume: '100 L' }).headline)[0] ?? 0;
        const two =
          most(feed({ mass: `${grams} g`, protein: `${protein} %`, volume: '200 L' }).headline)[0] ?? 0;
        // Three figures are printed.
        expect(Math.abs(one / two / 2 - 1)).toBeLessThan(0.011);
      }),
    );
  });

  it('says what a label did not give is from memory', () => {
    const text = textOf(feed({ protein: '48 %' }));
    expect(text).toMatch(/protein: 48 % of the food \(from the label\)/);
    expect(text).toMatch(/phosphorus: 0\.7 to 1\.9 % of the food \(from memory/);
  });

  it('refuses a label that cannot be', () => {
    expect(problemOf(() => feed({ protein: '99 %' })).limit).toBe('0 to 90 %');
    expect(problemOf(() => feed({ phosphorus: '40 %' })).field).toBe('phosphorus');
  });
});

describe('what it says', () => {
  it('parts plenty of food from high nitrate, and is no reading', () => {
    const text = textOf(feed({ volume: '200 L' }));
    expect(text).toMatch(/Plenty of food is not high nitrate/);
    expect(text).toMatch(/not a reading/);
    expect(text).toMatch(/go by the readings, not by this sum/);
    expect(text).not.toMatch(/dose nitrate|stop feeding/i);
  });

  it('has the feeding notes of a coral', () => {
    // Tagliafico et al. 2018: brine-shrimp nauplii per polyp and hour.
    expect(textOf(feed({ coral: 'duncan' }))).toMatch(
      /feeding: .*nauplii.*published: Tagliafico et al\. 2018/,
    );
    expect(textOf(feed({ coral: 'sun coral' }))).toMatch(/it must be fed/);
  });

  it('fits a message with the notes of any coral', () => {
    for (const entry of corals) {
      const { issues, text } = rendered(feed({ coral: tellingName(entry), volume: '75 gal' }));
      expect(issues, entry.id).toEqual([]);
      expect(text).not.toMatch(/undefined|NaN/);
    }
  });
});

it('takes the volume of the tank in use', () => {
  const [ada] = twoPersons();
  const given = ada.say('/coral feed food:pellet mass:2 g');
  expect(given.read[0]).toMatch(/net water of your tank Pantry: 276 L/);
  expect(given.headline).toMatch(/in 276 L/);
});
