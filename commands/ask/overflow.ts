import { freshExcessFraction } from '../../core/change/salt.ts';
import { fixed } from '../../core/quantity/format.ts';
import { readSalinity } from '../../core/water/salinity-reading.ts';
import { answer } from '../answer.ts';
import { says, type Intent } from './intent.ts';
import { saidOf } from '../../core/words/hear.ts';

/** Fresh water that ran in on top (stuck top-off, clogged overflow): leave it, let it evaporate. */
export const overflowIntent: Intent = (heard) => {
  const ranIn =
    says(heard, 'overflow', 'top ?off', 'auto ?top', 'ato', 'float switch') &&
    says(heard, 'kept', 'adding', 'added', 'stuck', 'clogged', 'overfilled', 'ran');
  const said = saidOf(heard, 'salinity').map(({ mention }) =>
    readSalinity(mention.text, { field: 'salinity' }),
  );
  const [first, second] = said;
  if (!ranIn || first === undefined || second === undefined) return undefined;
  const [now, usual] = first.practicalSalinity < second.practicalSalinity ? [first, second] : [second, first];
  const share = freshExcessFraction(usual.practicalSalinity, now.practicalSalinity) * 100;
  return answer({
    headline: `Leave it. The extra water is fresh, about ${fixed(share, 1)} % of the volume; let it evaporate and the salinity comes back by itself.`,
    read: [
      `usually ${usual.written}, now ${now.written}, and no salt water was lost`,
      ...new Set([...now.notes, ...usual.notes]),
    ],
    facts: [
      {
        label: 'fresh water too much',
        value: `about ${fixed(share, 1)} L per 100 L (${fixed(share, 1)} gal per 100 gal)`,
      },
    ],
    steps: [
      'Switch the automatic top-off off until the level is back at its usual mark.',
      'Measure again then; switch the top-off on when both level and salinity are right.',
      'Clean the overflow and see that the top-off has a second stop.',
    ],
    working: [
      `1 - ${fixed(now.practicalSalinity, 2)} / ${fixed(usual.practicalSalinity, 2)} = ${fixed(share, 1)} %`,
    ],
    cautions: [
      'Salt added now stays in when the extra water has gone, and the tank ends too salty.',
      'Only if tank water went onto the floor was salt lost: replace that part with salt water of the usual strength.',
    ],
    sources: ['mixing', 'fm83', 'practice'],
  });
};
