/**
 * What the log, the corals of a tank and the message itself can speak for. `zero`: nitrate or phosphate below what a kit
 * shows; `rich`: above the range; `moved`: more than is usual within a week. `fed`, `dosed`, `handled`, `sand stirred`: told
 * as done beside what is seen; `animal at it`: told as seen picking at the coral; `light the same`: told as not changed.
 */
export const signs = [
  'salinity off',
  'salinity moved',
  'alkalinity low',
  'alkalinity high',
  'alkalinity moved',
  'hot',
  'cold',
  'temperature moved',
  'zero',
  'rich',
  'ammonia',
  'nitrite',
  'new coral',
  'sting',
  'bright',
  'dim',
  'young tank',
  'new animal',
  'animal at it',
  'fed',
  'dosed',
  'handled',
  'sand stirred',
  'new light',
  'light the same',
] as const;

export type Sign = (typeof signs)[number];
