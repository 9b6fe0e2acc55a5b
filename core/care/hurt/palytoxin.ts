import { readIn } from '../../corals/basis-words.ts';
import { EYE_RINSE, FIRST_AID, type HurtCard } from './card.ts';

/** What people felt after it, in the published cases. */
const PALYTOXIN_SIGNS = 'metallic or bitter taste, numbness, fever, cough, muscle pain, weakness, sore eyes';

/** Where the signs of palytoxin were read. */
export const PALYTOXIN_BASIS = `palytoxin (${readIn('CDC2015', 'Pelin2016', 'Schulz2019', 'Accoroni2016')})`;

const SAY_IT = 'Say: "it may be palytoxin, from zoanthids in an aquarium". Few have seen a case.';
const SOURCES = ['CDC2015', 'Pelin2016', 'Schulz2019', 'Accoroni2016', 'memory'] as const;

/** Illness 7 to 8 h after live zoanthids came into a home tank is the published case. */
export const palytoxinBreathed: HurtCard = {
  label: 'Ill after zoanthids, rock or slime',
  first:
    'Everybody out of the room into fresh air now, pets too; then call the emergency number or poison centre.',
  steps: [
    SAY_IT,
    'Hard to breathe, chest pain, faint or numb: the emergency number; sit upright while you wait.',
    `Signs: ${PALYTOXIN_SIGNS}; even hours later.`,
    `Wet clothes off; rinse the skin with much clean water, ${EYE_RINSE}.`,
    'Room shut, nobody in. How to clean it up comes later (/urgent what:zoanthid rock).',
  ],
  never: [
    'Do not wait until it passes, and do not go back in to clean.',
    'Do not heat, sweep or vacuum what has dried.',
  ],
  basis: [PALYTOXIN_BASIS, FIRST_AID],
  sources: SOURCES,
};

export const palytoxinInEyeOrCut: HurtCard = {
  label: 'Zoanthid in the eye or a cut',
  first:
    'Rinse at once with much clean water, an eye for at least 20 minutes with the lens out. Then call the poison centre.',
  steps: [
    SAY_IT,
    'Eye: lids open, from the nose outwards. An eye doctor today, even when it feels better.',
    'Cut: running water, then soap, then cover it. Nothing tied off, nothing sucked out.',
    'Numb, weak, cramps, metallic taste, fever or short of breath, even hours later: the emergency number.',
    'Wash hands and face, and take off what got wet.',
  ],
  never: ['Do not rub the eye, and use no drops but those a doctor gives.'],
  basis: [PALYTOXIN_BASIS, FIRST_AID],
  sources: SOURCES,
};
