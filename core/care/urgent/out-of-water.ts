import type { UrgentCard } from './card.ts';

/** Hands at fish. */
export const SPINES = 'Spines hurt people (lionfish, rabbitfish, tangs): a cup or thick wet gloves.';

/** A fish that jumped or was carried out. Common practice, no source. */
export const outOfTheWater: UrgentCard = {
  label: 'A fish out of the water',
  first: 'Wet your hands and put it back now, gently: into the tank, or into a tub of tank water.',
  steps: [
    'Cables or plugs in a puddle there: breaker off first (/urgent what:flood).',
    'Lift it from below with wet hands, a wet cloth or a cup.',
    'It looks dead? Put it in gentle flow by an air stone all the same: some come round within minutes.',
    'Dust and hair float off in a tub of tank water. Do not rub: the slime on its skin keeps germs out.',
    'Others pick on it? A mesh box in the tank. Light down, and no food until it swims as usual.',
    'Watch how it breathes for some hours, and its fins, skin and eyes for days.',
    'Then a mesh lid without gaps, and why it jumped: a chase, a fright, or bad water.',
    'Read temperature and salinity, test ammonia.',
  ],
  never: [
    SPINES,
    'No medicine, and no bath in fresh water.',
    'Do not squeeze it or pull it about by the tail.',
  ],
  stop: 'Still on its side or breathing fast after some hours, or wounds that redden or go fluffy: a vet who knows fish.',
  sources: ['practice'],
};
