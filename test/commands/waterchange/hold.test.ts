import { describe, expect, it } from 'vitest';
import { fractionForChanges } from '../../../core/change/exchange.ts';
import { waterchangeCommands } from '../../../commands/waterchange.ts';
import { problemOf, runner, textOf } from '../text.ts';

const ask = runner(waterchangeCommands);

// Mass balance of a well-mixed tank, by hand: share = rise / (goal - new water).
describe('/waterchange routine without a share', () => {
  it('counts the share that holds a level', () => {
    const found = ask('routine', {
      of: 'no3',
      rise: '3 ppm a week',
      goal: '15',
      fresh: '5',
      volume: '400 L',
    });
    expect(found.headline).toMatch(/passing 15 mg\/L, change 30 % \(120 L\) every 7 days/);
    expect(textOf(found)).toMatch(/just after a change, once settled: 12 mg\/L/);
  });

  it('says where none does', () =>
    expect(ask('routine', { of: 'no3', rise: '20 ppm a week', goal: '15' }).headline).toMatch(
      /^No change of any size/,
    ));

  it('asks for a share or a level', () =>
    expect(problemOf(() => ask('routine', { of: 'no3', rise: '3 ppm a week' })).field).toBe('share'));
});

describe('so many changes to a goal', () => {
  it.each([
    [{ now: 80, goal: 10, fresh: 0 }, 3, 0.5],
    [{ now: 6, goal: 9, fresh: 10 }, 2, 0.5],
  ])('%o in %d', (aim, changes, share) => expect(fractionForChanges(aim, changes)).toBeCloseTo(share, 9));

  it('none beyond the new water', () =>
    expect(fractionForChanges({ now: 80, goal: 10, fresh: 20 }, 3)).toBeUndefined());

  it('asks how large or how many', () =>
    expect(problemOf(() => ask('goal', { of: 'no3', now: '80 ppm', goal: '10 ppm' })).field).toBe('share'));
});
