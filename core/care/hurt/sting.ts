import { cited } from '../../corals/basis-words.ts';
import { FIRST_AID, type HurtCard } from './card.ts';

/** Heat that a venomous spine needs; common practice of poison centres, from memory. */
const HOT = 'as hot as the other, unhurt hand bears (about 45 °C, never scalding)';
const HOT_BASIS =
  'hot water of about 45 °C for 30 to 90 minutes: common practice of poison centres and diving medicine, from memory';
const SERIOUS =
  'Short of breath, faint, chest pain, a swelling face, or a child: the emergency number first.';

export const fishSpine: HurtCard = {
  label: 'Fish spine: lionfish, rabbitfish, ray',
  first: `Into hot water now, ${HOT}, for 30 to 90 minutes. Then a doctor.`,
  steps: [
    SERIOUS,
    'Test the water with the unhurt hand: the stung one no longer feels a scald. Top it up as it cools.',
    'Rings off before it swells. Loose spines out; a deep one stays in for the doctor.',
    'Poison centre: say which fish. Stonefish and rays are an emergency call.',
    'The doctor also when the pain is gone: bits stay in, tetanus, germs of salt water.',
  ],
  never: ['No ice, nothing tied off, no cutting and no sucking.'],
  basis: [HOT_BASIS],
  sources: ['memory'],
};

export const urchinSpine: HurtCard = {
  label: 'Sea urchin or thorny starfish',
  first: `Into hot water, ${HOT}, for 30 to 90 minutes. Then a doctor.`,
  steps: [
    SERIOUS,
    'Spines that come easily: tweezers, straight along. A black dot alone can be dye.',
    'Broken off deep, or near a joint, nerve or eye: the doctor takes it out.',
    'Wash with soap and clean water, cover it.',
    'Redness that spreads, fever, or a joint that stiffens days later: a doctor the same day.',
  ],
  never: ['Do not dig for a spine, and do not crush it in the skin.'],
  basis: [HOT_BASIS],
  sources: ['memory'],
};

export const jellySting: HurtCard = {
  label: 'Jellyfish, hydroid or fire coral',
  first: 'Rinse with salt water, not fresh, and lift threads off with tweezers or gloves. Do not rub.',
  steps: [
    'Short of breath, faint, chest pain, a large patch, or a child: the emergency number.',
    `Then warmth against the pain: water ${HOT}.`,
    'Vinegar only if the poison centre says so for that animal: right for some, wrong for others.',
    'In the eye: clean water for at least 20 minutes, then an eye doctor.',
    'Blisters, or worse the next day: a doctor.',
  ],
  never: ['No fresh water on it at first, no scraping, no alcohol.'],
  basis: [`fire coral burns mostly 30 to 90 minutes (published: ${cited('VAPAGuide')})`, FIRST_AID],
  sources: ['VAPAGuide', 'memory'],
};

export const coralSting: HurtCard = {
  label: 'Anemone or coral: sting or scrape',
  first: 'Rinse with salt water, and lift slime and threads off with gloves or tweezers. Do not rub.',
  steps: [
    'Short of breath, faint, face or throat swelling, hives: the emergency number.',
    'A carpet anemone: call the poison centre even if it is only the arm.',
    'Was it a zoanthid? Then /urgent hurt:palytoxin in eye or cut.',
    'Then soap and clean water; bits of skeleton out of a scrape, and cover it.',
    'Spreading redness, blisters or fever: a doctor. Say "coral, salt water".',
  ],
  never: ['No fresh water on it at first, no scratching, no alcohol.'],
  basis: [FIRST_AID],
  sources: ['memory'],
};

export const bristleWorm: HurtCard = {
  label: 'Bristle worm or fireworm',
  first: 'Do not rub. Lift the bristles off with sticky tape, then tweezers, under a bright lamp.',
  steps: [
    'Then wash with soap and clean water.',
    `Burning goes on: warm water, ${HOT}.`,
    'In the eye or mouth, or short of breath: rinse, and the emergency number.',
    'Gloves and trousers may hold more of them: shake them out outdoors.',
    'Still red, numb or sore after days, or fever: a doctor.',
  ],
  never: ['Do not squeeze or scratch: they break.'],
  basis: [FIRST_AID],
  sources: ['memory'],
};

export const bite: HurtCard = {
  label: 'Bite; octopus or cone snail',
  first:
    'Wash it with soap and running water and press a clean cloth on it. Octopus or cone snail: the emergency number now.',
  steps: [
    'Octopus, cone snail, though it hardly hurts: lie down, limb still, never alone. Breathing can fail in minutes.',
    'It does fail: phone on loudspeaker, and breathe for them as the call taker says.',
    'Moray, trigger, puffer, turtle: it bleeds hard, so press first until it stops, then wash.',
    'A moray, a deep bite, a hand or a joint: a doctor today, for germs, tendons and tetanus.',
    'Still holding on: put hand and animal back under water. Do not tear.',
  ],
  never: ['No glue or tape over a bite, nothing tied off.'],
  basis: [FIRST_AID],
  sources: ['memory'],
};
