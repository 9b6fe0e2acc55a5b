import { FIRST_AID, type HurtCard } from './card.ts';

/** Electricity, fire, and somebody who does not answer. Common practice, from memory. */
export const collapsed: HurtCard = {
  label: 'Collapsed, or not breathing',
  first:
    'Call your emergency number now, phone on loudspeaker. Cables or wet floor there: breaker off before you touch them.',
  steps: [
    'Not breathing as usual: press hard and fast in the middle of the chest; the call taker counts with you.',
    'Breathing but not awake: turn them on their side, head back, and keep watching the breath.',
    'Fumes, smoke or a generator: get out yourself, and call from outside.',
    'A seizure: make room, nothing in the mouth, nothing held down.',
    'Send somebody for a defibrillator, and somebody to open the door.',
  ],
  never: ['Do not leave them alone, and give nothing to drink.'],
  basis: [FIRST_AID],
  sources: ['memory'],
};

export const electricShock: HurtCard = {
  label: 'Electric shock or tingle',
  first:
    'Do not touch them or the water: switch off at the breaker, from a dry place. Then call your emergency number.',
  steps: [
    'Breaker out of reach: keep everybody away, call, and say that the power is still on.',
    'Power off and they do not wake or breathe: phone on loudspeaker, and do what the call taker says.',
    'Only a tingle or a jolt: hands out, breaker off all the same. Every shock is seen by a doctor.',
    'Pain in the chest, a racing heart or a faint, today or tomorrow: the emergency number again.',
    'Plugs out with dry hands. An electrician finds the fault first (/urgent what:mains fault).',
  ],
  never: ['Never test it with a finger, and never bypass a trip switch that trips.'],
  basis: [FIRST_AID],
  sources: ['memory'],
};

export const fireOrBurn: HurtCard = {
  label: 'Fire, burn or scald',
  first:
    'If anything burns, everybody out, and call the fire service. Then cool the burn under cool running water for 20 minutes.',
  steps: [
    'Larger than a hand, on face, hands or joints, white or charred, or a child: the emergency number.',
    'Rings, watch and clothes off near it, unless they stick.',
    'Then cover it loosely with cling film or a clean cloth, and keep them warm.',
    'Smoke breathed in: a doctor today, even when it feels better.',
    'Lamp, heater or plug: breaker off before anyone goes near it again.',
  ],
  never: [
    'No ice, grease, cream or powder on it, and no blister opened.',
    'No water on electrics that burn.',
  ],
  basis: [FIRST_AID],
  sources: ['memory'],
};
