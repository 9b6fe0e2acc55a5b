import type { ParameterId } from '../../core/water/parameter.ts';

const KEEP_ONE = 'Keep the kit that matches the standard. Do not take the mean of the two.';
const BY_STANDARD = 'Test a standard with both kits, or fresh salt water whose number you know.';
const BY_HAND = 'Check expiry dates, sample volume, clean vials, and the time and shaking of each step.';

/** What proves which of two is right, for each parameter that has ways of its own. Common practice, no source. */
const PROOFS: Readonly<Partial<Record<ParameterId, readonly string[]>>> = {
  alkalinity: [
    'Test a standard, or fresh salt water whose alkalinity you know, with both kits.',
    'Check expiry dates, sample volume, and that the colour change was carried to the end.',
    KEEP_ONE,
    'Some kits stop early in sea water and read low.',
  ],
  nitrate: [
    BY_STANDARD,
    'Look what each prints: nitrate (NO3) or nitrogen (NO3-N); the one is 4.43 times the other.',
    BY_HAND,
    KEEP_ONE,
    'Nitrite in the water makes nitrate kits read far too high.',
  ],
  phosphate: [
    BY_STANDARD,
    'Look what each prints: phosphate (PO4) or phosphorus (P); the one is 3.07 times the other.',
    BY_HAND,
    KEEP_ONE,
    'Rinse the vials with the sample and keep fingers off the glass.',
  ],
  ph: [
    'Put the probe in two fresh buffers, 7 and 10, at the temperature of the tank: off there is off in the tank.',
    'A probe that cannot be set right or drifts within a minute is worn out; a drop kit reads to about 0.2.',
    'Read both at the same hour: pH is lowest before the lights come on and highest before they go off.',
    'Keep the one that reads both buffers right.',
  ],
  temperature: [
    'Put both side by side in the same moving water for ten minutes, and a third thermometer with them.',
    'Crushed ice with a little fresh water is 0 °C: put in there whatever may get so cold.',
    'Keep the one that reads the ice right, or that two of three agree with.',
    'What reads the ice wrong is replaced, and steers no heater meanwhile.',
  ],
  ammonia: [
    'Until you know, act on the higher one: water change ready, no feeding, and look for a dead animal.',
    'Test fresh salt water with both: it reads none, or that kit is off.',
    BY_HAND,
  ],
};

export function proofSteps(id: ParameterId): readonly string[] {
  return PROOFS[id] ?? [BY_STANDARD, BY_HAND, KEEP_ONE];
}
