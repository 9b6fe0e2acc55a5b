import { afterChanges } from '../../core/change/exchange.ts';
import { percent } from '../waterchange/pour.ts';
import { fact, waterOf, type Numbers, type UrgentInput } from './input.ts';

/** What changes of these shares are in litres. */
export function changesOf(input: UrgentInput, fractions: readonly number[]): Numbers {
  const { part, read, missing } = waterOf(input);
  return {
    read,
    facts: fractions.map((fraction) => fact(`a ${percent(fraction)} change`, part(fraction))),
    working: [],
    sources: ['mixing'],
    missing,
  };
}

/** How much of something poisonous is left after one, two and three changes of a share. */
export function leftAfter(input: UrgentInput, fraction: number): Numbers {
  const { part, read, missing } = waterOf(input);
  const left = [1, 2, 3].map((changes) => percent(afterChanges({ now: 1, fresh: 0, fraction }, changes)));
  return {
    read,
    facts: [
      fact(`a ${percent(fraction)} change`, part(fraction)),
      fact('left in the water', `after one such change ${left[0]}, two ${left[1]}, three ${left[2]}`),
    ],
    working: [`(1 - ${fraction})^n of what is dissolved is left after n changes`],
    sources: ['mixing'],
    missing,
  };
}
