import type { UrgentCard } from './card.ts';
import { ammonia, overdose, salinityCrash } from './chemistry.ts';
import { outOfTheWater } from './out-of-water.ts';
import { personHurt } from './person.ts';
import { bleachOrSpray, burstHeater, shreddedAnemone } from './poison.ts';
import { fireOrSparks, flood, oxygenLoss, powerCut } from './power.ts';
import { coldWater, overheating } from './warmth.ts';

/** Every emergency by the words of the option, people first. */
export const urgentCards = {
  'person hurt': personHurt,
  'fire or sparks': fireOrSparks,
  'power cut': powerCut,
  'oxygen loss': oxygenLoss,
  flood,
  overheating,
  'cold water': coldWater,
  ammonia,
  overdose,
  'salinity crash': salinityCrash,
  'burst heater': burstHeater,
  'bleach or spray': bleachOrSpray,
  'out of the water': outOfTheWater,
  'shredded anemone': shreddedAnemone,
} as const satisfies Record<string, UrgentCard>;

export type UrgentId = keyof typeof urgentCards;

export const urgentIds = Object.keys(urgentCards) as readonly UrgentId[];

export function urgentCard(id: UrgentId): UrgentCard {
  return urgentCards[id];
}
