import { expect, it } from 'vitest';
import { daysUntil } from '../../../core/trend/until.ts';

// A straight line, by hand: 1.4 dKH at 0.3 a day is 14/3 days; the kit's 0.15 is half a day of it.
it.each([
  { now: 8.4, goal: 7, perDay: -0.3, error: 0.15, expected: { days: 14 / 3, low: 25 / 6, high: 31 / 6 } },
  { now: 12, goal: 20, perDay: 4 / 7, error: 0, expected: { days: 14, low: 14, high: 14 } },
  { now: 7.1, goal: 7, perDay: -0.3, error: 0.15, expected: { days: 1 / 3, low: 0, high: 5 / 6 } },
])('from $now to $goal at $perDay a day', ({ now, goal, perDay, error, expected }) => {
  const found = daysUntil(now, goal, perDay, error) ?? expect.unreachable();
  expect(found.days).toBeCloseTo(expected.days, 9);
  expect(found.low).toBeCloseTo(expected.low, 9);
  expect(found.high).toBeCloseTo(expected.high, 9);
});

it.each([
  [8.4, 7, 0.3],
  [8.4, 9, -0.3],
  [8.4, 7, 0],
])('%d never gets to %d at %d a day', (now, goal, perDay) =>
  expect(daysUntil(now, goal, perDay)).toBeUndefined(),
);
