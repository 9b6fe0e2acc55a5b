import type { HurtGroupId, HurtId } from '../hurt/cards.ts';
import { ALLERGY } from './sure-hurts.ts';
import { ZOA, type Ways } from './way.ts';

const GLUE = ['poisons.superglue', 'poisons.epoxy'] as const;

/** Ways people and pets are hurt. */
export const hurtWays: Ways<'person-hurt', HurtId | HurtGroupId> = {
  shock: [{ card: 'electric shock' }],
  palytoxin: [
    {
      card: 'palytoxin in eye or cut',
      if: ['body.eye', 'body.cutMyself', 'body.pricked', 'body.bled', 'body.splashed'],
      unless: [
        'deeds.boils',
        'substances.hotWater',
        'body.inhaled',
        'body.cough',
        'body.breathless',
        'body.fever',
        'body.sick',
        'body.numb',
        'body.dizzy',
        'body.headPain',
        'body.weak',
      ],
    },
    { card: 'palytoxin breathed' },
  ],
  eye: [{ card: 'palytoxin in eye or cut', if: ZOA }, { card: 'glue', if: GLUE }, { card: 'in the eye' }],
  'skin burn': [
    ...ALLERGY,
    { card: 'palytoxin in eye or cut', if: ZOA },
    { card: 'glue', if: GLUE },
    {
      card: 'fire or burn',
      if: ['substances.hotWater', 'gear.lamp', 'gear.heater', 'hardware.pan', 'hardware.plug'],
      unless: [
        'substances.lime',
        'substances.lye',
        'substances.calciumSalt',
        'substances.alkPowder',
        'poisons.acid',
        'poisons.bleach',
        'poisons.peroxide',
        'poisons.formalin',
      ],
    },
    { card: 'on the skin' },
  ],
  swallowed: [...ALLERGY, { card: 'swallowed' }],
  fumes: [
    { card: 'palytoxin breathed', if: ZOA },
    {
      card: 'palytoxin breathed',
      if: ['deeds.boils', 'substances.hotWater'],
      and: ['places.rock', 'substances.rockAndSand', 'corals.anyCoral'],
    },
    { card: 'fumes or smoke' },
  ],
  'spine or sting': [
    { card: 'bite', if: ['animals.octopus', 'animals.coneSnail'] },
    { card: 'palytoxin in eye or cut', if: ZOA },
    { card: 'fish spine', if: ['fish.venomSpine', 'fish.rabbitfish', 'fish.ray'] },
    { card: 'urchin spine', if: ['animals.urchin', 'animals.spinyUrchin', 'animals.pestStar'] },
    ...ALLERGY,
    {
      card: 'bite',
      if: [
        'body.bitten',
        'fish.eel',
        'fish.trigger',
        'fish.puffer',
        'fish.shark',
        'animals.mantis',
        'animals.crab',
      ],
    },
    { card: 'jelly or hydroid sting', if: ['animals.jellyfish', 'animals.hydroid'] },
    { card: 'bristle worm', if: ['animals.bristleworm', 'animals.fireworm', 'animals.anyWorm'] },
    {
      card: 'anemone or coral sting',
      if: ['animals.anemone', 'animals.aiptasia', 'animals.majano', 'corals.anyCoral', '#coral'],
    },
    { card: 'fish spine', if: ['fish.anyFish', 'fish.tang'] },
    { card: 'sting, spine or bite' },
  ],
  cut: [
    { card: 'infected wound', if: ['body.infected', 'body.fever'] },
    {
      card: 'infected wound',
      if: ['body.rash', 'body.swelling'],
      and: ['times.lastNight', 'times.daysAgo', 'times.weeksAgo', 'times.longAgo'],
    },
    { card: 'palytoxin in eye or cut', if: ZOA },
    { card: 'glue', if: GLUE, unless: ['body.cutMyself', 'body.bled'] },
    { card: 'bite', if: ['body.bitten'] },
    { card: 'cut or glass' },
  ],
  'fall or unconscious': [
    { card: 'electric shock', if: ['body.shocked'] },
    { card: 'collapsed', if: ['body.fainted'] },
    { card: 'fall or crush', if: ['body.slipped', 'events.wentDown', 'lives.toppled', 'events.breaks'] },
    { card: 'collapsed' },
  ],
  pet: [{ card: 'pet' }],
};
