import { describe, expect, it } from 'vitest';
import { salinityCommands } from '../../../commands/salinity.ts';
import { problemOf, runner } from '../text.ts';

const adjust = (input: Readonly<Record<string, string>>) => runner(salinityCommands)('adjust', input);

// Conservation of salt, by hand: 35 + 0.25 x (31 - 35) = 34.
describe('/salinity adjust with one change', () => {
  it.each([
    [{ now: '35 ppt', fresh: '31 ppt', share: '25 %' }, '34 ppt'],
    [{ now: '35 ppt', fresh: '31 ppt', amount: '50 L', volume: '200 L' }, '34 ppt'],
  ])('%o', (input, after) => expect(adjust(input).headline).toContain(`to ${after}`));

  it.each([
    [{ now: '35 ppt', share: '25 %' }, 'fresh'],
    [{ now: '35 ppt', goal: '33 ppt', share: '25 %' }, 'goal'],
    [{ now: '35 ppt', fresh: '31 ppt', amount: '50 L' }, 'volume'],
  ])('asks about %o', (input, field) => expect(problemOf(() => adjust(input)).field).toBe(field));
});
