import type { ClassName } from '../language/lexicon/classes.ts';

/**
 * A kind of fish as it is judged among others, the smallest that bear the name. All of it is common practice, no source: as
 * in the cards of fish where these give a figure; the others (seahorse, goby, butterflyfish, triggerfish, puffer) from memory.
 */
export interface FishKind {
  /** One of them. */
  readonly name: string;
  readonly classes: readonly ClassName[];
  /** The least water one of them wants, L. */
  readonly leastL: number;
  /** And the least length of glass, cm. */
  readonly leastCm?: number;
  /** More than so many of them fight or die, */
  readonly most?: number;
  /** from so much water on one more may go, L. */
  readonly oneMoreFromL?: number;
  /** It bullies the shy ones below so much water, L. */
  readonly bulliesBelowL?: number;
  readonly isShy?: true;
  /** It eats small fish, whatever the water. */
  readonly isHunter?: true;
  /** It wants a tank of its own kind. */
  readonly isApart?: true;
}

/** In the order they go in: the shyest first, bullies, tangs and hunters last. */
export const fishKinds: readonly FishKind[] = [
  { name: 'seahorse', classes: ['fish.seahorse'], leastL: 100, isApart: true },
  { name: 'mandarin', classes: ['fish.mandarin'], leastL: 250, most: 1, isShy: true },
  { name: 'firefish', classes: ['fish.firefish'], leastL: 75, most: 1, isShy: true },
  { name: 'goby', classes: ['fish.goby'], leastL: 40, isShy: true },
  { name: 'cardinalfish', classes: ['fish.cardinal'], leastL: 110, isShy: true },
  { name: 'chromis', classes: ['fish.chromis'], leastL: 150 },
  { name: 'anthias', classes: ['fish.anthias'], leastL: 400 },
  { name: 'gramma', classes: ['fish.gramma'], leastL: 75, most: 1, isShy: true },
  { name: 'blenny', classes: ['fish.blenny'], leastL: 75, most: 1, oneMoreFromL: 150 },
  { name: 'clownfish', classes: ['fish.clown'], leastL: 75, most: 2 },
  { name: 'butterflyfish', classes: ['fish.butterfly'], leastL: 400, most: 1 },
  { name: 'dwarf angel', classes: ['fish.dwarfAngel'], leastL: 200, most: 1, oneMoreFromL: 400 },
  { name: 'wrasse', classes: ['fish.wrasse'], leastL: 150 },
  { name: 'six-line wrasse', classes: ['fish.sixLine'], leastL: 100, most: 1, bulliesBelowL: 300 },
  { name: 'damsel', classes: ['fish.damsel'], leastL: 100, most: 1, bulliesBelowL: 200 },
  { name: 'dottyback', classes: ['fish.dottyback'], leastL: 75, most: 1, bulliesBelowL: 200 },
  { name: 'foxface', classes: ['fish.rabbitfish'], leastL: 300, leastCm: 120, most: 1 },
  { name: 'tang', classes: ['fish.tang'], leastL: 300, leastCm: 120, most: 1, oneMoreFromL: 450 },
  { name: 'triggerfish', classes: ['fish.trigger'], leastL: 500, most: 1 },
  { name: 'puffer', classes: ['fish.puffer'], leastL: 200, most: 1, isHunter: true },
  { name: 'lionfish', classes: ['fish.venomSpine'], leastL: 200, most: 1, isHunter: true },
  { name: 'moray', classes: ['fish.eel'], leastL: 300, most: 1, isHunter: true },
];
