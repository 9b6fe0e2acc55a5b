/** Words several emergencies are said with, patterns of whole words. */
export const TANK = ['tank', 'sump', 'water', 'reef', 'aquarium', 'display', 'temp(?:erature)?'] as const;
export const FISH = [
  'fish(?:es)?',
  'clown(?:s|fish)?',
  'tangs?',
  'goby',
  'wrasses?',
  'everything',
  'everyone',
  'they',
] as const;
/** Animals that climb or jump out. */
export const FISHES = [
  'fish',
  'clown(?:s|fish)?',
  'tang',
  'goby',
  'wrasse',
  'eel',
  'jaw ?fish',
  'fire ?fish',
  'blenny',
  'octopus',
  'crab',
  'anthias',
  'chromis',
  'damsel',
  'gramma',
  'puffer',
  'starfish',
] as const;
export const DOSED = [
  'alk\\w*',
  'd?kh',
  'lime ?water',
  'lime',
  'kalk\\w*',
  'calcium',
  'ca',
  'magnesium',
  'mag',
  'soda ash',
  'baking soda',
  'bicarb\\w*',
  'two[- ]part',
  'dos(?:er|ing pump)',
  'carbonate',
] as const;
