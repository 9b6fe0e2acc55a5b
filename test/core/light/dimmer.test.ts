import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dimmerSetting, isFarFromReading } from '../../../core/light/dimmer.ts';
import { Problem } from '../../../core/problem.ts';

const source = 'proportion by hand; that lamps are near proportional is common practice, no source';

describe('dimmerSetting', () => {
  it.each([
    { ppfd: 120, settingPercent: 50, goal: 150, expected: 62.5, source },
    { ppfd: 200, settingPercent: 80, goal: 50, expected: 20, source },
    { ppfd: 100, settingPercent: 40, goal: 250, expected: 100, source },
  ])(
    '$ppfd PAR at $settingPercent %, goal $goal -> $expected %',
    ({ ppfd, settingPercent, goal, expected }) => {
      const found = dimmerSetting({ ppfd, settingPercent }, goal);
      expect(found.reached && found.settingPercent).toBeCloseTo(expected, 9);
    },
  );

  it('says what full power gives where it does not reach the goal', () => {
    expect(dimmerSetting({ ppfd: 120, settingPercent: 50 }, 300)).toEqual({
      reached: false,
      ppfdAtFull: 240,
    });
  });

  const light = fc.double({ min: 1, max: 2000, noNaN: true });
  const share = fc.double({ min: 1, max: 99, noNaN: true });

  it('reaches a goal exactly where full power does, and never above 100 %', () => {
    fc.assert(
      fc.property(light, share, light, (measured, at, goal) => {
        const found = dimmerSetting({ ppfd: measured, settingPercent: at }, goal);
        fc.pre(Math.abs(found.ppfdAtFull / goal - 1) > 1e-9);
        expect(found.reached).toBe(found.ppfdAtFull > goal);
        expect(found.reached ? found.settingPercent : 0).toBeLessThanOrEqual(100);
      }),
    );
  });

  it('a reading at the new setting asks for the old setting back', () => {
    fc.assert(
      fc.property(light, share, light, (measured, at, goal) => {
        const found = dimmerSetting({ ppfd: measured, settingPercent: at }, goal);
        fc.pre(found.reached && found.settingPercent >= 1);
        const setting = found.reached ? found.settingPercent : Number.NaN;
        const back = dimmerSetting({ ppfd: goal, settingPercent: setting }, measured);
        expect(back.reached && back.settingPercent).toBeCloseTo(at, 6);
      }),
    );
  });

  it.each([
    { ppfd: 0, settingPercent: 50, goal: 100 },
    { ppfd: 100, settingPercent: 0, goal: 100 },
    { ppfd: 100, settingPercent: 101, goal: 100 },
    { ppfd: 100, settingPercent: 50, goal: 0 },
    { ppfd: 100, settingPercent: 50, goal: 9000 },
  ])('refuses $ppfd PAR at $settingPercent %, goal $goal', ({ ppfd, settingPercent, goal }) => {
    expect(() => dimmerSetting({ ppfd, settingPercent }, goal)).toThrow(Problem);
  });
});

describe('isFarFromReading', () => {
  it.each([
    [62.5, 50, false],
    [100, 50, false],
    [90, 40, true],
    [20, 50, true],
  ] as const)('%s %% from a reading at %s %%: %s', (setting, at, expected) => {
    expect(isFarFromReading(setting, at)).toBe(expected);
  });
});
