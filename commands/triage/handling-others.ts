import { EYE_RINSE } from '../../core/care/hurt/card.ts';
import { met, type Met } from '../../core/language/met.ts';
import type { Scanned } from '../../core/language/tokens.ts';
import { answer, type Answer } from '../answer.ts';

const EYE = `Rinse ${EYE_RINSE}; then the poison centre or a doctor.`;

/**
 * What is met with at a tank beside its chemicals and animals; one class of each group. Common practice, no source; how eyes
 * are rinsed is from memory.
 */
const others: readonly (readonly [answer: Answer, ...groups: readonly (readonly Met[])[]])[] = [
  [
    answer({
      headline:
        'Yes, gloves and goggles for any dip: iodine stains and burns, the others sting skin and eyes. Its label comes first.',
      steps: [
        'Open a window, old clothes, a tray under the jug; children and pets out of the room.',
        'Measure with the dip’s own cap or syringe, never by mouth; wash hands afterwards.',
        'Used dip does not go into the tank; throw it away as the label says.',
      ],
      dangers: [EYE, 'Zoanthids in the dip may hold palytoxin: they stay wet, no spray. Ill: poison centre.'],
      sources: ['practice', 'memory'],
    }),
    ['deeds.dips', 'poisons.dip', 'substances.iodine'],
  ],
  [
    answer({
      headline:
        'Looking at the lit tank is harmless. Never stare into the lamp from near by: strong blue, violet and UV can hurt eyes.',
      steps: ['Lamp off or down before you work under it; a shade keeps it out of the eyes of who sits.'],
      dangers: ['Eyes that hurt, or spots that stay: a doctor.'],
      sources: ['practice'],
    }),
    ['gear.lamp', 'places.bright'],
    ['body.eye'],
  ],
  [
    answer({
      headline:
        'On skin it is mostly harmless: do not pull. Warm soapy water, or acetone on whole skin, and patience.',
      dangers: ['Lips or eye: no acetone and no pulling, a doctor.', EYE],
      sources: ['practice', 'memory'],
    }),
    ['poisons.superglue'],
  ],
];

export function otherHandling(scanned: Scanned): Answer | undefined {
  return others.find(([, ...groups]) => groups.every((classes) => met(scanned, ...classes)))?.[0];
}
