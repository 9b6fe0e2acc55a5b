import { expect, it } from 'vitest';
import { ampHours, runHours, wattHours, wattHoursOf } from '../../../core/gear/battery.ts';

// By hand; a fifth lost, lead half and lithium nine tenths used are common practice, no source.
it('takes the loss on the way into account', () => expect(wattHours(40, 8)).toBeCloseTo(320 / 0.8, 6));
it.each([
  ['lead', 400 / 6],
  ['lithium', 400 / 10.8],
] as const)('needs so many Ah of %s', (battery, ah) => expect(ampHours(400, battery)).toBeCloseTo(ah, 6));
it.each([
  [7, 8, 'lead', 4.2],
  [100, 15, 'lithium', 57.6],
] as const)('of %d Ah runs %d W in %s', (ah, watts, battery, hours) =>
  expect(runHours(wattHoursOf(ah), watts, battery)).toBeCloseTo(hours, 1),
);
