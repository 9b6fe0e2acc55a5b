import { animalCards } from './animals.ts';
import { chemistryCards } from './chemistry.ts';
import { keepingCards } from './keeping.ts';
import { primerIds, type Primer, type PrimerId } from './primer.ts';
import { waterCards } from './water.ts';

const all = [...animalCards, ...chemistryCards, ...keepingCards, ...waterCards];

/** Every card, in the order of `primerIds`. */
export const primers: readonly Primer[] = primerIds.map(primer);

/** The card of that title. */
export function primer(id: PrimerId): Primer {
  const found = all.find((card) => card.id === id);
  if (found === undefined) throw new Error(`no card ${id}`);
  return found;
}
