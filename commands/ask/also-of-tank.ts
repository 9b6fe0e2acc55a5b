import { dangerKinds } from '../../core/language/kind-groups.ts';
import { tankPerhaps } from '../urgent/tank-perhaps.ts';
import type { Given } from './answered.ts';
import type { Decision } from './decide.ts';
import { saidFor } from './rows/emergencies.ts';

/** What is taken for a hurt person and may be of the tank alone: what comes first in both. */
export function alsoOfTank({
  frame,
  others,
}: Extract<Decision, { readonly kind: 'answer' }>): Given | undefined {
  const isBoth = frame.kind === 'person-hurt' && others.some(({ kind }) => kind === 'urgent-water');
  const both = isBoth ? tankPerhaps(frame.reading, saidFor(frame)) : undefined;
  return both && { answer: both, frame, taken: dangerKinds };
}
