import type { UrgentCard } from './card.ts';
import { ammonia, otherOverdose, overdose, salinityCrash } from './chemistry.ts';
import { dyingAnimal } from './dying-animal.ts';
import { mainsFault } from './mains.ts';
import { metalInTheWater } from './metal.ts';
import { outOfTheWater } from './out-of-water.ts';
import { bleachOrSpray, burstHeater, shreddedAnemone } from './poison.ts';
import { fireOrSparks, flood, oxygenLoss, powerCut } from './power.ts';
import { coldWater, overheating } from './warmth.ts';
import { copperOrMedicine, untreatedTapWater } from './water-poison.ts';
import { zoanthidRock } from './zoanthid-rock.ts';

/** Every emergency of a tank by the words of the option; a hurt person has cards of their own (hurt/cards.ts). */
export const urgentCards = {
  'fire or sparks': fireOrSparks,
  'mains fault': mainsFault,
  'power cut': powerCut,
  'oxygen loss': oxygenLoss,
  flood,
  overheating,
  'cold water': coldWater,
  ammonia,
  overdose,
  'other overdose': otherOverdose,
  'salinity crash': salinityCrash,
  'burst heater': burstHeater,
  'metal in the water': metalInTheWater,
  'bleach or spray': bleachOrSpray,
  'out of the water': outOfTheWater,
  'shredded anemone': shreddedAnemone,
  'copper or medicine': copperOrMedicine,
  'untreated tap water': untreatedTapWater,
  'zoanthid rock': zoanthidRock,
  'dying animal': dyingAnimal,
} as const satisfies Record<string, UrgentCard>;

export type UrgentId = keyof typeof urgentCards;

export const urgentIds = Object.keys(urgentCards) as readonly UrgentId[];

export function urgentCard(id: UrgentId): UrgentCard {
  return urgentCards[id];
}
