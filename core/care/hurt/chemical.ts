import { BLEACH_GAS } from '../hazards.ts';
import { EYE_RINSE, type HurtCard } from './card.ts';

/** Caustics, acids, peroxide, reagents and gases. The P-statements are those of UN GHS; the minutes are from memory. */
export const inTheEye: HurtCard = {
  label: 'Something in the eye',
  first:
    'Rinse at once with much clean water, lids open, for at least 20 minutes, then call the poison centre. Lens out.',
  steps: [
    'Lukewarm tap, shower or bottle, from the nose outwards, so that nothing runs into the other eye.',
    'The contact lens comes out as soon as it does so easily; go on rinsing.',
    'Lime, lye, soda ash, acid, peroxide, bleach: somebody calls the emergency number while you rinse.',
    'Salt water, a reagent or something unknown: the same rinse, and an eye doctor today.',
    'Go on rinsing on the way. Take the label along.',
  ],
  never: ['Do not rub. Nothing sour or soda to balance it, and no eye drops.'],
  basis: [
    'rinse, lens out, go on rinsing: GHS statements P305+P351+P338; 20 minutes and more: practice of poison centres, from memory',
  ],
  sources: ['ghs', 'memory'],
};

export const onTheSkin: HurtCard = {
  label: 'Caustic, acid or peroxide on the skin',
  first: 'Off with what is wet with it, and rinse the skin under running water now, for at least 20 minutes.',
  steps: [
    'Dry powder (lime, lye, calcium chloride): brush it off first, then rinse.',
    'Blisters, white or numb skin, larger than a hand, face or hands, or a child: the emergency number.',
    'Anything less: the poison centre, with the label in hand.',
    'Rings and watch off. Gloves for whoever helps.',
    `Splashed higher: rinse the ${EYE_RINSE}.`,
  ],
  never: ['Nothing sour or soda to balance it, no cream, no rubbing.'],
  basis: [
    'take off, rinse: GHS statements P303+P361+P353; 20 minutes: practice of poison centres, from memory',
  ],
  sources: ['ghs', 'memory'],
};

export const swallowed: HurtCard = {
  label: 'Something swallowed',
  first: 'Rinse the mouth and spit out. Do not make them vomit. Call the poison centre now, label in hand.',
  steps: [
    'Drools, cannot swallow, vomits blood, drowsy or short of breath: the emergency number instead.',
    'Say what it was, how much is missing, when, and the weight of a child.',
    'Drink only if the poison centre says so.',
    'Zoanthid, coral or slime: say palytoxin. Numb lips and a metallic taste are signs.',
    'A gulp of tank water: rinse, and a doctor if fever, vomiting or a metallic taste follow.',
  ],
  never: ['No vomiting, no milk, no salt water, and nothing to balance it.'],
  basis: [
    'rinse the mouth, no vomiting: GHS statements P301+P330+P331; the rest: practice of poison centres, from memory',
  ],
  sources: ['ghs', 'memory'],
};

export const fumesOrSmoke: HurtCard = {
  label: 'Fumes, gas or smoke breathed in',
  first:
    'Everybody and every pet out into fresh air now; call the emergency number or poison centre from there.',
  steps: [
    'Bleach mixed with acid, vinegar or ammonia gives off poisonous gas: do not go back to pour it away.',
    'A generator, grill or stove indoors, or headaches there: carbon monoxide. Everyone needs a doctor.',
    'Short of breath, tight chest, a cough that stays: sit upright, call again. It can grow for hours.',
    `Eyes or skin burn too: rinse with much clean water, ${EYE_RINSE}.`,
    'Fire service airs the room. Say what was mixed or burnt.',
  ],
  never: [BLEACH_GAS, 'Do not go back in for the tank.'],
  basis: ['into fresh air: GHS statement P304+P340; the rest: practice of poison centres, from memory'],
  sources: ['ghs', 'memory'],
};
