import { describe, expect, it } from 'vitest';
import { callId } from '../../../bot/discord/asked/call.ts';
import { doseCommands } from '../../../commands/dose.ts';
import { compoundsFor } from '../../../core/dosing/compound.ts';
import { parameterIds } from '../../../core/water/parameter.ts';
import { club, START_MS } from '../remind/person.ts';
import { inputOf } from '../../action.ts';

const amount = doseCommands.find(({ path }) => path[1] === 'amount');
const split = { of: 'alkalinity', now: '6', goal: '9', with: 'sodium carbonate', volume: '100 L' };
const label = /^Remind me of each day/;
const rises: Readonly<Record<string, string>> = {
  alkalinity: '+5 dKH',
  calcium: '+100',
  magnesium: '+300',
  nitrate: '+9',
  phosphate: '+0.09',
};

describe('a dose split over days', () => {
  const { owner, wait } = club();
  const context = { nowMs: START_MS, keep: owner.keep };
  const offered = (input: object, asked: typeof context | { nowMs: number } = context) =>
    amount?.run({ ...split, ...input }, asked).next.find((one) => label.test(one.label));

  it('becomes reminders by one button: each portion once, numbered, and no more', () => {
    // 3 dKH in 100 L of 1.890 g Na2CO3 a dKH (IUPAC 2021): 5.67 g, in three days of 1.89 g.
    const set = owner.press(offered({}));
    expect(set.headline).toBe(
      'Set as reminder 1: 1.89 g of sodium carbonate, every day at 09:00 (Europe/Berlin), 3 times in all.',
    );
    expect(set.facts.map(({ value }) => value).slice(0, 3)).toEqual([
      'Saturday 2026-01-03 09:00, 1 of 3',
      'Sunday 2026-01-04 09:00, 2 of 3',
      'Monday 2026-01-05 09:00, 3 of 3',
    ]);
    expect(wait(24 * 30)).toHaveLength(3);
  });

  it('is offered to whoever may press it, with or without something kept', () =>
    expect(offered({}, { nowMs: START_MS })).toEqual(offered({})));

  it('is not offered for one day, or for water that is not known', () => {
    expect(offered({ goal: '6.5' })).toBeUndefined();
    expect(offered({ volume: undefined })).toBeUndefined();
  });

  it('fits a button for every salt', () => {
    const all = parameterIds.flatMap((of) => compoundsFor(of).map(({ name }) => ({ of, with: name })));
    const found = all.flatMap((one) => {
      const goal = rises[one.of];
      return goal === undefined
        ? []
        : (offered({ ...one, now: undefined, goal, volume: '1234 L', sure: 'yes' }) ?? []);
    });
    expect(found.length).toBeGreaterThan(6);
    for (const action of found) expect(callId(action), inputOf(action)['text']).toBeDefined();
  });
});
