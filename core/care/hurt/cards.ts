import type { HurtCard } from './card.ts';
import { fumesOrSmoke, inTheEye, onTheSkin, swallowed } from './chemical.ts';
import { collapsed, electricShock, fireOrBurn } from './mains.ts';
import { palytoxinBreathed, palytoxinInEyeOrCut } from './palytoxin.ts';
import { pet } from './pet.ts';
import { bite, bristleWorm, coralSting, fishSpine, jellySting, urchinSpine } from './sting.ts';
import { allergicReaction, cutOrGlass, fallOrCrush, glue, infectedWound } from './wound.ts';

/** Every way somebody can be hurt, by the words of the option; what can kill within minutes first. */
export const hurtCards = {
  collapsed,
  'electric shock': electricShock,
  'fire or burn': fireOrBurn,
  'fumes or smoke': fumesOrSmoke,
  'allergic reaction': allergicReaction,
  'palytoxin breathed': palytoxinBreathed,
  'palytoxin in eye or cut': palytoxinInEyeOrCut,
  'in the eye': inTheEye,
  'on the skin': onTheSkin,
  swallowed,
  'fish spine': fishSpine,
  'urchin spine': urchinSpine,
  'jelly or hydroid sting': jellySting,
  'anemone or coral sting': coralSting,
  'bristle worm': bristleWorm,
  bite,
  'cut or glass': cutOrGlass,
  'fall or crush': fallOrCrush,
  glue,
  'infected wound': infectedWound,
  pet,
} as const satisfies Record<string, HurtCard>;

export type HurtId = keyof typeof hurtCards;

export const hurtIds = Object.keys(hurtCards) as readonly HurtId[];

export function hurtCard(id: HurtId): HurtCard {
  return hurtCards[id];
}

/** Several hurts behind one button: a message holds ten. */
export const hurtGroups = {
  'poison or chemical': {
    label: 'Poison, chemical, zoanthid',
    ids: ['palytoxin breathed', 'palytoxin in eye or cut', 'in the eye', 'on the skin', 'swallowed'],
  },
  'sting, spine or bite': {
    label: 'Sting, spine or bite',
    ids: [
      'fish spine',
      'urchin spine',
      'jelly or hydroid sting',
      'anemone or coral sting',
      'bristle worm',
      'bite',
    ],
  },
  'cut, fall or sore': {
    label: 'Cut, fall, glue, sore',
    ids: ['cut or glass', 'fall or crush', 'glue', 'infected wound'],
  },
} as const satisfies Record<string, { readonly label: string; readonly ids: readonly HurtId[] }>;

export type HurtGroupId = keyof typeof hurtGroups;

export const hurtGroupIds = Object.keys(hurtGroups) as readonly HurtGroupId[];
