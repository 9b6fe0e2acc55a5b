import { describe, expect, it } from 'vitest';
import { heaterWatts, stuckRise } from '../../../core/gear/heater.ts';

describe('a heater', () => {
  it.each([
    // By hand, 0.1 W a litre for each °C of cold (common practice, no source): 208.2 x 0.1 x 9.4.
    [208.2, 15.6, 196],
    [240, 17, 192],
    [75.7, 16, 68],
    // A usual room: 0.5 W a litre at least.
    [100, 21, 50],
  ])('for %d L in a room of %d °C', (volumeL, roomC, watts) =>
    expect(heaterWatts(volumeL, roomC)[1]).toBeCloseTo(watts, -0.5),
  );

  it('may need twice as much where the room is not known', () =>
    expect(heaterWatts(189, undefined)).toEqual([94.5, 189]));

  // 200 W x 3600 s = 720 kJ; 100 L of sea water take 409 kJ for each °C (3994 J/(kg K), 1.0233 kg/L, from memory).
  it('that sticks on', () => expect(stuckRise(200, 100)).toBeCloseTo(720 / 409, 1));
});
