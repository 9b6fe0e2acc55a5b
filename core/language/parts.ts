/** The part a number plays in a message; counts, prices and what else no sum takes are `none`. */
export const partNames = [
  'now',
  'was',
  'wanted',
  'change',
  'rate',
  'amount',
  'strength',
  'system',
  'part',
  'changed',
  'other',
  'limit',
  'target',
  'length',
  'span',
  'moment',
  'setting',
  'light',
  'othertemp',
  'none',
] as const;

export type PartName = (typeof partNames)[number];

/** Parts that are levels of a parameter. */
export const levelParts = [
  'now',
  'was',
  'wanted',
  'change',
  'rate',
  'other',
  'limit',
  'target',
] as const satisfies readonly PartName[];

export type LevelPart = (typeof levelParts)[number];

export function isLevelPart(part: PartName): part is LevelPart {
  return levelParts.some((name) => name === part);
}

/** What a number can be of. `water` and `share` belong to water changed, `container` and below to a part of the system. */
export const ofNames = [
  'nothing',
  'alkalinity',
  'calcium',
  'magnesium',
  'nitrate',
  'phosphate',
  'ammonia',
  'nitrite',
  'pH',
  'salinity',
  'temperature',
  'potassium',
  'iodine',
  'strontium',
  'substance',
  'light',
  'flow',
  'coral',
  'fish',
  'water',
  'share',
  'container',
  'stock',
  'sump',
  'display',
] as const;

export type OfName = (typeof ofNames)[number];
