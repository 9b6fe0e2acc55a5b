/** Water that runs back into the sump when the return pump stops, and what becomes of it, litres. */
export interface DrainDown {
  readonly drainsL: number;
  readonly pipesL: number;
  /** Free space in the sump above the level it runs at. */
  readonly roomL: number;
}

/**
 * Litres that end on the floor: what runs back less the free space, never less than 0. Source: volumes add
 * [geometry]. Check: a 120 x 50 cm surface that falls 4 cm is 24 L; with 2 L in the pipes and 20 L of room, 6 L.
 * Doubt: rock and coral in that layer make it less, a return that sucks air late makes it more.
 */
export function onTheFloorL({ drainsL, pipesL, roomL }: DrainDown): number {
  return Math.max(0, drainsL + pipesL - roomL);
}
