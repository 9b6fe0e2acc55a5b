/** Where in the tank something is seen, as offered first; a word opens the group. */
export const groups = {
  colour: 'A coral lost or changed colour',
  flesh: 'Flesh dies back, peels or rots',
  shape: 'Shut, shrunken, stretched or slimy',
  pests: 'Spots, bites, worms or pests',
  film: 'Algae, slime or film',
  fish: 'A fish looks ill',
  water: 'The water or its numbers',
} as const;

export type GroupId = keyof typeof groups;

export const groupIds = Object.keys(groups) as readonly GroupId[];
