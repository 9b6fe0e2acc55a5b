/** Water is held at about this, °C. Common practice, no source. */
const TANK_C = 25;
/** W per litre in a usual room (from 20 °C). Common practice, no source. */
const USUAL_W_PER_L = 0.5;
/** W per litre for each °C that the room is colder than the tank. Common practice, no source. */
const W_PER_L_PER_C = 0.1;
/** W per litre up to which a cold room of unknown warmth may need it. Common practice, no source. */
const COLD_W_PER_L = 1;

/** Specific heat, J/(kg K), and density, kg/L, of sea water of 35 ppt at 25 °C: 3994 and 1.0233 (from memory). */
const J_PER_L_C = 3994 * 1.0233;

/**
 * Watts that hold a volume, in L, warm in a room of so many °C at its coldest; from least to most where the room is not
 * known. Range: 20 to 2000 L, room 0 to 25 °C; doubt about a third (lid, sump, draught). Check: 208 L at 15.6 °C, 196 W.
 */
export function heaterWatts(
  volumeL: number,
  roomC: number | undefined,
): readonly [least: number, most: number] {
  if (roomC === undefined) return [USUAL_W_PER_L * volumeL, COLD_W_PER_L * volumeL];
  const watts = Math.max(USUAL_W_PER_L, W_PER_L_PER_C * (TANK_C - roomC)) * volumeL;
  return [watts, watts];
}

/** °C an hour by which a heater that sticks on warms water at first, losses left out. Check: 200 W in 100 L, 1.8. */
export function stuckRise(watts: number, volumeL: number): number {
  return (watts * 3600) / (volumeL * J_PER_L_C);
}
