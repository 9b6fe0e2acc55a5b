import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { guessedBox } from '../../../core/corals/guessed-box.ts';
import { roughWords, spotWords } from '../../../core/corals/spot-words.ts';
import { readSpot } from '../../../core/corals/spot.ts';
import { Problem } from '../../../core/problem.ts';
import { real } from './real.ts';

const box = { lengthCm: 120, widthCm: 60, heightCm: 48 } as const;

const whole = (most: number) => fc.integer({ min: 0, max: most });
const side = (most: number) => real(0, most);

describe('readSpot', () => {
  it.each([
    // Thirds of the length and depth; sand, 1/4, 1/2 and 3/4 of the height (project rule).
    ['left, back, middle rock', [20, 50, 24], true],
    ['Left back low', [20, 50, 12], true],
    ['right front high', [100, 10, 36], true],
    ['top right front', [100, 10, 36], true],
    ['centre back sand', [60, 50, 0], true],
    ['middle, front, on the sand', [60, 10, 0], true],
    ['middle middle low', [60, 30, 12], true],
    ['left front corner, mid height', [20, 10, 24], true],
    // In cm, and in inches of 2.54 cm.
    ['12 x 30 x 20 cm', [12, 30, 20], false],
    ['12,5 x 30 x 0 cm', [12.5, 30, 0], false],
    ['10 in x 10 x 10', [25.4, 25.4, 25.4], false],
    ['10 in x 20 cm x 5 cm', [25.4, 20, 5], false],
    ['30 cm from the left, 10 from the front, on the sand', [30, 10, 0], false],
    ['30 cm from the left, 10 cm from the front, 15 cm up', [30, 10, 15], false],
    ['20 cm from the right side, 5 cm from the back, 8 cm below the surface', [100, 55, 40], false],
    ['300 mm off the left, 10 cm from the front, 5 cm above the sand', [30, 10, 5], false],
    ['30 cm from the left, back, low', [30, 50, 12], true],
    ['left, front, 20 cm high', [20, 10, 20], true],
  ] as const)('%s', (text, [x, y, z], rough) => {
    const read = readSpot(text, box);
    expect(read.rough).toBe(rough);
    expect(read.spot.xCm).toBeCloseTo(x, 9);
    expect(read.spot.yCm).toBeCloseTo(y, 9);
    expect(read.spot.zCm).toBeCloseTo(z, 9);
  });

  it.each([
    ['', /Left, centre or right/],
    ['sand', /Left, centre or right/],
    ['left, low', /Front, middle or back/],
    ['left back', /On the sand, low, middle or high/],
    ['back middle', /The middle of what/],
    ['left right low', /two places/],
    ['on the moon', /cannot read "moon"/],
    ['12 x 30 x 20', /Which unit/],
    ['121 x 30 x 20 cm', /outside the tank/],
    ['30 cm from the left, 70 cm from the back, low', /outside the tank/],
    ['30 cm from the left, 40 cm from the left, low', /one side twice/],
    ['30 cm from the left, left, front, low', /two places/],
    ['9'.repeat(400), /cannot read/],
  ])('asks back at "%.20s"', (text, message) => {
    const problem = ((): unknown => {
      try {
        return readSpot(text, box);
      } catch (error) {
        return error;
      }
    })();
    expect(problem).toBeInstanceOf(Problem);
    if (!(problem instanceof Problem)) return;
    expect(problem.message).toMatch(message);
    expect(problem.hint ?? problem.limit ?? problem.choices.join()).not.toBe('');
  });

  it('offers complete texts when the unit is missing', () => {
    expect(() => readSpot('12 x 30 x 20', box)).toThrow(
      expect.objectContaining({ choices: ['12 x 30 x 20 cm', '12 x 30 x 20 in'] }),
    );
  });

  it('reads back what spotWords says, to the millimetre', () => {
    fc.assert(
      fc.property(whole(120), whole(60), whole(48), (xCm, yCm, zCm) => {
        const read = readSpot(spotWords({ xCm, yCm, zCm }), box);
        expect(read).toEqual({ spot: { xCm, yCm, zCm }, rough: false });
      }),
    );
  });

  it('reads rough words back into the same rough words', () => {
    fc.assert(
      fc.property(side(120), side(60), side(48), (xCm, yCm, zCm) => {
        const words = roughWords({ xCm, yCm, zCm }, box);
        expect(roughWords(readSpot(words, box).spot, box)).toBe(words);
      }),
    );
  });

  it('never throws anything but a Problem', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 60 }), (text) => {
        try {
          const { spot } = readSpot(text, box);
          expect(Object.values(spot).every(Number.isFinite)).toBe(true);
        } catch (error) {
          expect(error).toBeInstanceOf(Problem);
        }
      }),
    );
  });
});

describe('guessedBox', () => {
  // Plane geometry: 2 : 1 : 1, 1 L = 1000 cm3. The proportion is a project rule.
  it.each([
    [250, { lengthCm: 100, widthCm: 50, heightCm: 50 }],
    [54, { lengthCm: 60, widthCm: 30, heightCm: 30 }],
  ])('%d L', (litres, guess) => expect(guessedBox(litres)).toEqual(guess));

  it('holds about the volume it was guessed from', () => {
    for (const litres of [20, 75, 284, 900, 5000]) {
      const { lengthCm, widthCm, heightCm } = guessedBox(litres);
      expect((lengthCm * widthCm * heightCm) / 1000 / litres).toBeCloseTo(1, 1);
    }
  });

  it('refuses a volume that is none', () => expect(() => guessedBox(0)).toThrow(Problem));
});
