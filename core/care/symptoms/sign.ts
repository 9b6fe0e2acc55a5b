/**
 * What the log and the corals of a tank can speak for. `zero`: nitrate or phosphate below what a kit shows; `rich`: above
 * the range; `moved`: more than is usual within a week.
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
] as const;

export type Sign = (typeof signs)[number];
