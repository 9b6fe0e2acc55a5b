import { readIn } from '../../corals/basis-words.ts';
import type { UrgentCard } from './card.ts';

/** Stands with every other emergency: people before animals. */
export const PEOPLE_FIRST =
  'People first: anyone shocked, burnt, numb, short of breath or unwell goes before any animal (/urgent what:person hurt).';

/** Said wherever somebody asks for a medicine. */
export const NO_MEDICINE =
  'I never give a dose of a medicine. Ask a vet who knows fish, and follow the label of the product.';

/** Two products that make a poisonous gas together. */
export const BLEACH_GAS = 'Never mix bleach with acid, vinegar or ammonia: the gas is poisonous.';

/** What sea-animal poison is treated like, whatever else was asked. */
const PALYTOXIN_SIGNS =
  'metallic or bitter taste, numbness, fever, cough, muscle pain or weakness, sore eyes';

/** Where the signs of palytoxin were read. */
export const PALYTOXIN_BASIS = `palytoxin, ${readIn('CDC2015', 'Pelin2016', 'Schulz2019', 'Accoroni2016')}`;

/**
 * Somebody is hurt. General first aid as safety data sheets and poison centres give it; a doctor decides. Illness 7 to
 * 8 h after live zoanthids came into a home tank is the published case.
 */
export const personHurt: UrgentCard = {
  label: 'A person is hurt or ill',
  first:
    'A person first: call your emergency number or poison centre now if anyone is hurt, short of breath, numb or unwell.',
  steps: [
    'Electric shock: do not touch them or the water. Switch off at the breaker, then help. Every shock is seen by a doctor.',
    'Does not wake up or does not breathe: call, put the phone on loudspeaker, and do what they tell you.',
    `Ill after zoanthids, rock or slime (${PALYTOXIN_SIGNS}): out of the room, fresh air, others and pets out too. Rinse eyes and skin. Tell the doctor it may be palytoxin. Signs can come hours later. Do not go back in to clean.`,
    'In the eye: rinse with plenty of clean water at once, lids open, contact lenses out if that is easy, keep rinsing for many minutes, and get medical help.',
    'Caustic powder or solution on the skin: brush dry powder off, take off what is wet with it, rinse with plenty of water for a long time. Nothing sour to balance it.',
    'Swallowed: rinse the mouth, do not make them vomit, and call the poison centre with the label in hand.',
    'Breathed in fumes, smoke or spray, or a headache while a generator or grill runs: everybody out into fresh air, and call from there.',
    'Stung, bitten or spined: call the poison centre now for a lionfish, stonefish, ray, cone snail, octopus or jellyfish, for a swollen face or trouble breathing. Leave a deep spine in.',
    'Heavy bleeding: press hard on it with a clean cloth, and call. A cut that swells, reddens or comes with fever: a doctor the same day. Say it was in salt water.',
    'A pet that licked, ate or drank something, or fell ill: a vet or animal poison line now, with the label. Do not make it vomit.',
  ],
  never: [
    'Do not wait for an answer here, and do not wait until it passes.',
    'Do not heat, scrub dry, bleach or vacuum rock or coral that somebody fell ill from.',
  ],
  stop: 'I am no doctor and give no treatment. Bring the product label, and say what was handled and when.',
  published: [PALYTOXIN_BASIS],
  sources: ['ghs', 'practice'],
};
