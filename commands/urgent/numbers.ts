import { baggedMixGPerL } from '../../core/change/salt.ts';
import type { UrgentId } from '../../core/care/urgent/cards.ts';
import { mass } from '../../core/quantity/format.ts';
import { ppt, seawaterPpt } from '../salinity/print.ts';
import { changesOf, leftAfter } from './changes.ts';
import { heatNumbers } from './heat-facts.ts';
import { fact, nothing, salinityOf, together, type Numbers, type UrgentInput } from './input.ts';
import { ammoniaNumbers, overdoseNumbers } from './level-facts.ts';
import { oxygenHeld } from './oxygen-facts.ts';
import { salinityNumbers } from './salinity-facts.ts';

const HOW_LONG = fact(
  'how long a tank lasts',
  'not known: from 1 to more than 18 hours are told. Many fish, warm water and little surface make it short',
);

/** What can be worked out for an emergency from what is known of the tank. */
export function numbersFor(id: UrgentId, input: UrgentInput): Numbers {
  switch (id) {
    case 'person hurt':
    case 'fire or sparks':
    case 'out of the water':
      return nothing;
    case 'power cut':
      return together({ ...nothing, facts: [HOW_LONG] }, oxygenHeld(input));
    case 'oxygen loss':
      return together(oxygenHeld(input), changesOf(input, [0.2, 0.3]));
    case 'flood':
      return refill(input);
    case 'overheating':
      return heatNumbers(input, 'hot');
    case 'cold water':
      return heatNumbers(input, 'cold');
    case 'ammonia':
      return ammoniaNumbers(input);
    case 'overdose':
      return overdoseNumbers(input);
    case 'salinity crash':
      return salinityNumbers(input);
    case 'burst heater':
      return leftAfter(input, 0.4);
    case 'bleach or spray':
      return leftAfter(input, 1 / 3);
    case 'shredded anemone':
      return changesOf(input, [0.2, 0.3]);
  }
}

/** Salt for water that ran out, per 10 L. */
function refill(input: UrgentInput): Numbers {
  const known = salinityOf(input);
  const s = known?.practicalSalinity ?? seawaterPpt;
  const { low, high } = baggedMixGPerL(s);
  return {
    ...nothing,
    read: [
      known === undefined ? `salinity taken as ${ppt(s)}` : `salinity ${ppt(s)}`,
      ...(known?.notes ?? []),
    ],
    facts: [
      fact(
        'new salt water',
        `${mass(low * 10)} to ${mass(high * 10)} of bagged mix in every 10 L that ran out (common practice)`,
      ),
    ],
    sources: ['practice'],
  };
}
