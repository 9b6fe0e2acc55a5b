import type { HurtId } from '../hurt/cards.ts';
import { MAINS, ZOA, type Way } from './way.ts';

export const ALLERGY: readonly Way<HurtId>[] = [
  {
    card: 'allergic reaction',
    if: ['body.allergy', 'body.rash'],
    and: ['body.breathless', 'body.face', 'body.mouth', 'body.airway', 'body.fainted', 'body.dizzy'],
  },
  { card: 'allergic reaction', if: ['body.allergy'], and: ['body.rash', 'body.swelling', 'body.itching'] },
];

/** What the words of a message say of a hurt by themselves, where the learnt cards are not sure. */
export const sureHurts: readonly Way<HurtId>[] = [
  { card: 'bite', if: ['animals.octopus', 'animals.coneSnail'] },
  { card: 'collapsed', if: ['body.fainted'] },
  { card: 'electric shock', if: ['body.shocked'], and: MAINS },
  ...ALLERGY,
  { card: 'palytoxin in eye or cut', if: ZOA, and: ['body.eye', 'body.cutMyself', 'body.pricked'] },
  {
    card: 'palytoxin breathed',
    if: ZOA,
    and: ['body.sick', 'body.fever', 'body.cough', 'body.numb', 'body.breathless'],
  },
  { card: 'fish spine', if: ['fish.venomSpine', 'fish.rabbitfish', 'fish.ray'] },
  { card: 'urchin spine', if: ['animals.urchin', 'animals.spinyUrchin'] },
  { card: 'bite', if: ['body.bitten'] },
  { card: 'infected wound', if: ['body.infected'] },
  { card: 'in the eye', if: ['body.eye'] },
  { card: 'swallowed', if: ['body.swallowed'] },
  { card: 'fumes or smoke', if: ['body.inhaled'] },
  { card: 'cut or glass', if: ['body.bled'] },
];
