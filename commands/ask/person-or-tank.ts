import { dangerKinds } from '../../core/language/kind-groups.ts';
import { personOrTank } from '../urgent/either.ts';
import { urgentSaid } from '../urgent/said.ts';
import type { Given } from './answered.ts';
import type { Decision } from './decide.ts';

/** What is taken for a hurt person and may be of the tank alone: what comes first in both. */
export function personOrTankOf({
  frame,
  others,
}: Extract<Decision, { readonly kind: 'answer' }>): Given | undefined {
  const { kind, slots, reading } = frame;
  if (kind !== 'person-hurt' || !others.some((other) => other.kind === 'urgent-water')) return undefined;
  const both = personOrTank(reading, (what) => urgentSaid(what, slots, reading));
  return both && { answer: both, frame, taken: dangerKinds };
}
