/**
 * The most a tank with corals is moved in a day, on the scale of the reading. Common practice, no source; raising is
 * taken at half of it.
 */
export const usualSalinityPace = { SG: 0.001, ppt: 1, raisingPart: 0.5 } as const;
