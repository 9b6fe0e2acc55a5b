import type { UrgentCard } from './card.ts';

/** A coin, magnet, battery, screw or rust. Common practice, no source; how poisonous a given thing is, is not known. */
export const metalInTheWater: UrgentCard = {
  label: 'Metal, coin or battery in the water',
  first:
    'Take it out now, with all that crumbles off it: gloves on, and the plugs nearby out first, with dry hands.',
  steps: [
    'A resin that binds metals and fresh activated carbon, by their labels, where the water flows through.',
    'Change a third of the water today, matched in salinity and temperature, and again tomorrow.',
    'Watch snails, shrimps and soft corals for days: they go first. Siphon rust and green crust out.',
    'A battery or magnet that leaks: not with bare hands, into a closed bag, and to where batteries are taken back.',
    'A laboratory can measure metals: send a sample kept from before the change.',
  ],
  never: [
    'A button cell or a magnet that a child may have swallowed: the emergency number at once.',
    'Nothing else into the water against it, unless its label says so.',
  ],
  stop: 'Animals dying after the first change: ask experienced keepers today. How much went into the water is not known.',
  sources: ['practice', 'mixing'],
};
