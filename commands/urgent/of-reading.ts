import { hurtWays } from '../../core/care/house-cards/hurt.ts';
import { sureHurts } from '../../core/care/house-cards/sure-hurts.ts';
import { urgentWays } from '../../core/care/house-cards/urgent.ts';
import { hurtIds, type HurtGroupId, type HurtId } from '../../core/care/hurt/cards.ts';
import { fits, meantCards, type Meant } from '../../core/care/meant-cards.ts';
import type { UrgentId } from '../../core/care/urgent/cards.ts';
import { levelCards } from '../../core/care/urgent/level-card.ts';
import { dangersIn } from '../../core/language/danger.ts';
import type { Kind } from '../../core/language/kinds.ts';
import { parameterOf } from '../../core/language/levels-said.ts';
import { met, type Met } from '../../core/language/met.ts';
import type { Reading } from '../../core/language/reading.ts';
import { overdosed } from './said.ts';

/** Those that can kill people first, then those that kill a tank soonest. */
export const byDanger: readonly UrgentId[] = [
  'fire or sparks',
  'mains fault',
  'flood',
  'out of the water',
  'burst heater',
  'metal in the water',
  'bleach or spray',
  'untreated tap water',
  'copper or medicine',
  'shredded anemone',
  'oxygen loss',
  'power cut',
  'overdose',
  'other overdose',
  'salinity crash',
  'overheating',
  'cold water',
  'ammonia',
];

/**
 * A card less than this ahead of the next may as well be another. Read off emergencies by older weights that had not seen
 * them. Of 340 of a tank, 94 were within it: the likeliest was right in 47, one of three in 80; beyond it in 235 of 246.
 * Of 180 hurts 12 were within: 7 and 11; beyond it 166 of 168.
 */
const AHEAD = { tank: 0.6, hurt: 0.4 } as const;

/**
 * The emergency of a tank that a message tells of. A level that is an emergency by itself is believed before the words of
 * another level; animals that gasp do so of something, and its card is better where it is no matter of hours.
 */
export function urgentOf(reading: Reading): Meant<UrgentId> {
  const { first: told, ...rest } = meantCards(
    reading.cards('urgent-water'),
    urgentWays,
    reading.scanned,
    byDanger,
    AHEAD.tank,
  );
  // The card of a parameter is for what was named or is implied, never for iodine or food.
  const isOther = overdosed(reading) === undefined;
  const ofOther = (id: UrgentId): UrgentId => (isOther && id === 'overdose' ? 'other overdose' : id);
  const named = {
    ...rest,
    first: told && ofOther(told),
    near: withoutOpposite(rest.near.map(ofOther), reading),
  };
  const [measured, ...more] = dangersIn(reading).map(({ card }) => card);
  if (measured === undefined) return named;
  const event = named.first !== undefined && !levelCards.has(named.first) ? named.first : undefined;
  const isCause = measured !== 'salinity crash' && measured !== 'cold water';
  const first = event === undefined || (event === 'oxygen loss' && isCause) ? measured : event;
  const events = [event, ...named.others]
    .filter((id) => id !== undefined)
    .filter((id) => !levelCards.has(id));
  const all = [...new Set([measured, ...more, ...events])];
  return { first, share: 1, near: [first], others: all.filter((id) => id !== first) };
}

/** A number of the warmth that was said goes with one side alone. */
function withoutOpposite(near: readonly UrgentId[], { said }: Reading): readonly UrgentId[] {
  const [likeliest] = near;
  const isSaid = said.some(({ of }) => parameterOf(of) === 'temperature');
  const isSide = isSaid && likeliest !== undefined && SIDES.has(likeliest);
  return isSide ? near.filter((id) => id === likeliest || !SIDES.has(id)) : near;
}

const SIDES: ReadonlySet<UrgentId> = new Set(['overheating', 'cold water']);

/** From this share the learnt card is believed before the words; own choice. */
const SURE = 0.6;

/** How somebody was hurt; undefined as the first where the message does not say. */
export function hurtOf(reading: Reading): Meant<HurtId | HurtGroupId> {
  const { scanned } = reading;
  const named = meantCards(reading.cards('person-hurt'), hurtWays, scanned, hurtIds, AHEAD.hurt);
  const sure = named.share < SURE ? sureHurts.find((way) => fits(way, scanned))?.card : undefined;
  if (sure === undefined) return named;
  const others = [named.first, ...named.others].filter((id) => id !== undefined && id !== sure);
  return { first: sure, share: named.share, near: [sure], others: others.filter((id) => id !== undefined) };
}

/** Probability of a kind by the words of a message. */
export function shareOf({ kinds }: Pick<Reading, 'kinds'>, kind: Kind): number {
  return kinds.find(({ name }) => name === kind)?.probability ?? 0;
}

/** A pet that no word names must be this many times likelier than a tank in danger; own choice. */
const UNNAMED_PET = 4;

/**
 * How many times the probability of a tank in danger somebody hurt needs to come first: `usual`, or more where it would be
 * a pet and none was named: "bleach spilled into the sump".
 */
export function personLead(reading: Reading, usual: number): number {
  return hurtOf(reading).near[0] === 'pet' && !met(reading.scanned, ...PETS) ? UNNAMED_PET : usual;
}

export const PETS = [
  'animals.dog',
  'animals.cat',
  'animals.bird',
  'animals.furryPet',
  'animals.farmAnimal',
  'animals.reptile',
] as const;

/**
 * Whether a message that nothing else could be made of may tell of somebody hurt. Deliberately wide: a question too many
 * costs a tap, an emergency that is not understood may cost more.
 */
export function mayBeHurt({ scanned }: Pick<Reading, 'scanned'>): boolean {
  return met(scanned, ...BODY);
}

const BODY: readonly Met[] = [
  'body.hand',
  'body.arm',
  'body.legs',
  'body.eye',
  'body.heart',
  'body.numb',
  'body.dizzy',
  'body.fever',
  'body.cough',
  'body.breathless',
  'body.rash',
  'body.fainted',
  'body.choked',
  'body.stung',
  'body.scalded',
  'body.shocked',
  'body.bled',
  'body.doctor',
  'body.hospital',
  'body.ambulance',
  'body.poisonCentre',
];
