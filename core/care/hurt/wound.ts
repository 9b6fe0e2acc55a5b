import { FIRST_AID, type HurtCard } from './card.ts';

/** Cuts, falls, glue, what comes after a wound, and allergy. Common practice, from memory. */
export const cutOrGlass: HurtCard = {
  label: 'Cut, glass, bleeding',
  first: 'Press hard on it with a clean cloth. It spurts or soaks through: call the emergency number.',
  steps: [
    'Glass or anything deep stays in: press beside it.',
    'Bleeding stopped: running water, soap, cover it.',
    'A doctor today: it gapes, is deep, numb or near a joint, glass may be in it, or tetanus is old.',
    'Cut by rock with zoanthids: /urgent hurt:palytoxin in eye or cut.',
    'Redness that spreads, or fever: a doctor the same day. Say "cut in salt water".',
  ],
  never: ['No frag glue in a cut.', 'Broken glass in the tank: plugs out before a hand goes in.'],
  basis: [FIRST_AID],
  sources: ['memory'],
};

export const fallOrCrush: HurtCard = {
  label: 'Fall, or a tank on somebody',
  first:
    'Press where it bleeds, hold a hurt limb still. Head, neck or back: do not move them, call the emergency number.',
  steps: [
    'Water near cables: breaker off first, from a dry place.',
    'Trapped under a tank or stand: the fire service. Lift only if nothing else can fall.',
    'Head hit: drowsy, confused, vomiting, even hours later: the emergency number.',
    'A crooked limb or one that cannot move: leave it as it is, and a doctor.',
    'Keep them warm, give nothing to eat or drink.',
  ],
  never: ['Do not pull anybody up to see whether they can stand.'],
  basis: [FIRST_AID],
  sources: ['memory'],
};

export const glue: HurtCard = {
  label: 'Glue on skin, lips or eyelid',
  first:
    'Do not pull. Soak skin in warm soapy water and roll it apart; eye or eyelid: warm wet cloth, and a doctor now.',
  steps: [
    'Glue in the eye: rinse with much clean water. It opens by itself; nobody forces it.',
    'Lips: warm water and spit, swallow no lumps, and call the poison centre.',
    'It gets hot, on cloth above all: cool running water for 20 minutes.',
    'Skin came off: rinse, cover it, and a doctor if it is larger than a coin.',
    'Solvents only on whole skin, by their label, never near eyes, mouth or a wound.',
  ],
  never: ['No scissors or blade between glued skin.'],
  basis: [FIRST_AID],
  sources: ['memory'],
};

export const infectedWound: HurtCard = {
  label: 'A wound gets red, sore or will not heal',
  first:
    'A doctor today: say "hurt in a fish tank, salt water". Fever, chills or a red line: the emergency number.',
  steps: [
    'Fast: dark blisters, great pain or fever within days can be Vibrio. Hours count: hospital.',
    'Ill liver, diabetes, a weak immune system or pregnancy: hospital at once.',
    'Slow: a lump or sore for weeks can be Mycobacterium marinum; the doctor must be told of fish to look for it.',
    'Until then clean, dry, covered and up. Draw round the redness, with the hour.',
    'That hand stays out of the tank until it has healed.',
  ],
  never: ['No left-over or fish antibiotics, and no squeezing.'],
  basis: [FIRST_AID],
  sources: ['memory'],
};

export const allergicReaction: HurtCard = {
  label: 'Allergic reaction, hives, swelling',
  first:
    'Tight throat, swelling face or tongue, wheeze or faint: the emergency number now, and their own emergency pen at once.',
  steps: [
    'Hard to breathe: sit up. Faint: lie down, legs up. Never alone.',
    'Gloves and wet sleeves off; rinse the skin with water.',
    'Only hives or a rash: a doctor or poison centre today; watch for hours, it can come back.',
    'Say what it was: coral, anemone, bloodworms, powder.',
    'After handling zoanthids it may be palytoxin: say so too.',
  ],
  never: ['Do not drive there yourself.'],
  basis: [FIRST_AID],
  sources: ['memory'],
};
