import { describe, expect, it } from 'vitest';
import { cycleStage, nitrateDisturbed, onItsDay, type CycleTest } from '../../../core/care/cycle.ts';

const log = (...rows: readonly (readonly [number, number, number?])[]): [CycleTest, ...CycleTest[]] => {
  const [first, ...more] = rows.map(([ammonia, nitrite, nitrate], day) => ({
    when: `day ${day}`,
    ammonia,
    nitrite,
    nitrate,
  }));
  if (first === undefined) throw new Error('an empty log');
  return [first, ...more];
};

/** The order ammonia, nitrite, nitrate of a filter that matures: common practice, no source. */
describe('cycleStage', () => {
  it.each([
    ['nitrite falling', log([4, 0, 0], [1, 1, 20], [0, 2, 40], [0, 1, 20])],
    ['ammonia not falling', log([2, 0], [4, 0])],
    ['ammonia falling', log([4, 0], [2, 0.5])],
    ['nitrite not falling', log([4, 0], [0, 1], [0, 2])],
    ['nitrite', log([0, 2])],
    ['both', log([1, 5])],
    ['ammonia', log([2, 0])],
    ['zero once', log([4, 0], [0, 2], [0, 0])],
    ['zero held', log([4, 0], [0, 2], [0, 0], [0, 0])],
    ['zero once', log([0.2, 0.05])],
    ['nothing seen', log([0, 0], [0, 0])],
  ] as const)('%s', (stage, tests) => expect(cycleStage(tests)).toBe(stage));
});

/** Common practice, no source: ammonia alone for up to two weeks, both up to day 25, nitrite up to six weeks. */
describe('onItsDay', () => {
  it.each([
    ['both', 12, 'usual'],
    ['both', 40, 'slow'],
    ['ammonia', 9, 'usual'],
    ['ammonia', 21, 'slow'],
    ['nitrite', 30, 'usual'],
    ['ammonia falling', 30, undefined],
  ] as const)('%s on day %i: %s', (stage, day, course) => expect(onItsDay(stage, day)).toBe(course));
});

describe('nitrateDisturbed', () => {
  it.each([
    [true, log([0, 2, 40])],
    [false, log([0, 0, 40])],
    [false, log([0, 2])],
  ])('%s', (disturbed, tests) => expect(nitrateDisturbed(tests)).toBe(disturbed));
});
