import { baggedMixGPerL } from '../../core/change/salt.ts';
import type { UrgentId } from '../../core/care/urgent/cards.ts';
import { mass } from '../../core/quantity/format.ts';
import { ppt, seawaterPpt } from '../salinity/print.ts';
import { changesOf, leftAfter } from './changes.ts';
import { heatNumbers } from './heat-facts.ts';
import { fact, nothing, orWhy, together, type Numbers } from './facts.ts';
import { dosedOf, type Known } from './input.ts';
import { ammoniaNumbers, overdoseNumbers } from './level-facts.ts';
import { oxygenHeld } from './oxygen-facts.ts';
import { salinityNumbers } from './salinity-facts.ts';

const HOW_LONG = fact(
  'how long a tank lasts',
  'not known: from 1 to more than 18 hours are told; many fish, warmth, little surface shorten it',
);

/** What can be worked out for an emergency from what is known of the tank; never a Problem. */
export function numbersFor(id: UrgentId, known: Known, of: string | undefined): Numbers {
  return orWhy(
    () => summed(id, known, of),
    (why) => ({ ...nothing, facts: [fact('the sums', why)] }),
  );
}

function summed(id: UrgentId, known: Known, of: string | undefined): Numbers {
  switch (id) {
    case 'fire or sparks':
    case 'mains fault':
    case 'out of the water':
    case 'zoanthid rock':
    case 'dying animal':
    case 'untreated tap water':
      return nothing;
    case 'power cut':
      return together({ ...nothing, facts: [HOW_LONG] }, oxygenHeld(known));
    case 'oxygen loss':
      return together(oxygenHeld(known), changesOf(known, [0.2, 0.3]));
    case 'flood':
      return refill(known);
    case 'overheating':
      return heatNumbers(known, 'hot');
    case 'cold water':
      return heatNumbers(known, 'cold');
    case 'ammonia':
      return ammoniaNumbers(known);
    case 'overdose':
      return overdoseNumbers(known, dosedOf(of));
    case 'salinity crash':
      return salinityNumbers(known);
    case 'burst heater':
      return leftAfter(known, 0.4);
    case 'bleach or spray':
    case 'metal in the water':
    case 'copper or medicine':
      return leftAfter(known, 1 / 3);
    case 'other overdose':
      return changesOf(known, [0.25]);
    case 'shredded anemone':
      return changesOf(known, [0.2, 0.3]);
  }
}

/** Salt for water that ran out, per 10 L. */
function refill({ salinity: known }: Known): Numbers {
  const s = known?.value ?? seawaterPpt;
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
