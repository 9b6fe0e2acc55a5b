import { expect, it } from 'vitest';
import { onTheFloorL } from '../../../core/change/drain-down.ts';

// 12 dm x 5 dm x 0.4 dm = 24 L.
it.each([
  { drainsL: 24, pipesL: 2, roomL: 20, expected: 6 },
  { drainsL: 24, pipesL: 0, roomL: 30, expected: 0 },
])('$drainsL + $pipesL L into $roomL L of room leave $expected L over', ({ expected, ...down }) =>
  expect(onTheFloorL(down)).toBe(expected),
);
