import type { UrgentId } from '../../core/care/urgent/cards.ts';
import { personHurt } from '../../core/care/urgent/person.ts';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { urgentAction } from './action.ts';

/** Opens a second menu: a message holds ten buttons. */
export const SOMETHING_GOT_IN = 'something got in';

const gotIn: readonly UrgentId[] = [
  'overdose',
  'out of the water',
  'burst heater',
  'bleach or spray',
  'shredded anemone',
];
const direct: readonly UrgentId[] = [
  'person hurt',
  'fire or sparks',
  'power cut',
  'oxygen loss',
  'flood',
  'overheating',
  'cold water',
  'ammonia',
  'salinity crash',
];

/** What is happening? People first. */
export function menuAnswer(): Answer {
  return answer({
    headline: 'What is happening? If anyone is hurt, that comes first.',
    steps: ['Water near mains: switch off at the breaker from a dry place before you touch anything.'],
    cautions: [personHurt.stop],
    sources: ['practice'],
    next: [
      ...direct.map(urgentAction),
      action('Something broke, got in or out', 'urgent', { what: SOMETHING_GOT_IN }),
    ],
  });
}

export function somethingGotIn(): Answer {
  return answer({
    headline: 'Plugs out before your hands go in. What broke, got in or got out?',
    cautions: [personHurt.stop],
    sources: ['practice'],
    next: [...gotIn, 'person hurt' as const].map(urgentAction),
  });
}
