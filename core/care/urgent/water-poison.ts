import type { UrgentCard } from './card.ts';

/** Copper, medicines and tap water: what the reef itself never gets. Common practice, no source. */
export const copperOrMedicine: UrgentCard = {
  label: 'Copper or a medicine in the reef',
  first:
    'Never in the reef itself: copper and most medicines kill shrimps, snails, corals and the filter. Is it in? Stop it now.',
  steps: [
    'It is in: fresh activated carbon and a resin that binds metals, by their labels, where water flows through.',
    'A third of the water changed now and again tomorrow, matched in salinity and temperature.',
    'Shrimps, snails, starfish and corals into clean, matched water if you can. An air stone in.',
    'A sick fish is treated in a bare tank of its own, by a vet and the label. I give no amount of any medicine.',
    'Rock, sand and silicone keep copper and give it back for months: what was used with it stays out of a reef.',
  ],
  never: [
    'No second medicine against the first, and no guess at an amount: antibiotics, dewormers and formalin too.',
    'Do not trust an unnamed medicine that says reef safe: read what is in it.',
  ],
  stop: 'Invertebrates twist, fall or die, or fish gasp: ask a vet who knows fish, today. A laboratory can measure copper.',
  sources: ['practice', 'mixing'],
};

export const untreatedTapWater: UrgentCard = {
  label: 'Tap water, chlorine, chloramine',
  first:
    'A conditioner made for chlorine and chloramine first, by its own label: untreated tap water burns gills.',
  steps: [
    'It is in the tank: condition for all of its water, by the label, and stop the tap.',
    'Surface moving hard, air stone in, window open: watch how the fish breathe.',
    'Fresh activated carbon where the water flows through. Test ammonia today and tomorrow: chloramine leaves it.',
    'Chlorine leaves with time and air; chloramine does not. A total chlorine test, or your water works, tells.',
    'Better for a reef: RO water, with carbon stages that are not spent. Test the water after them.',
  ],
  never: [
    'Do not let it stand and hope: chloramine stays.',
    'No second chemical on top unless its label says so. Tap water can hold copper, too.',
  ],
  stop: 'Fish gasping: /urgent what:oxygen loss. Salinity fell with it: /urgent what:salinity crash.',
  sources: ['practice'],
};
