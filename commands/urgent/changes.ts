import { afterChanges } from '../../core/change/exchange.ts';
import { percent } from '../waterchange/pour.ts';
import { fact, type Numbers } from './facts.ts';
import type { Known } from './input.ts';

/** What changes of these shares are in litres. */
export function changesOf({ water, missing }: Known, fractions: readonly number[]): Numbers {
  const { part, read } = water;
  return {
    read,
    facts: fractions.map((fraction) => fact(`a ${percent(fraction)} change`, part(fraction))),
    working: [],
    sources: ['mixing'],
    missing,
  };
}

/** How much of something poisonous is left after one, two and three changes of a share. */
export function leftAfter({ water, missing }: Known, fraction: number): Numbers {
  const { part, read } = water;
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
