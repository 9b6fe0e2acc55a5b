import type { Kind } from './kinds.ts';
import type { Likely } from './likely.ts';

/** People, animals or a tank are in danger now: these are answered before everything else. */
export const dangerKinds = ['person-hurt', 'urgent-water'] as const satisfies readonly Kind[];
export type DangerKind = (typeof dangerKinds)[number];

export function isDangerKind(kind: string | undefined): kind is DangerKind {
  return dangerKinds.some((danger) => danger === kind);
}

/** Probability of danger among kinds, 0 to 1. */
export function dangerOf(kinds: readonly Likely[]): number {
  return kinds
    .filter(({ name }) => isDangerKind(name))
    .reduce((sum, { probability }) => sum + probability, 0);
}

const SUM = /^(?:dose|change|salinity|solution|limewater|volume|convert)/;

/** Whether a kind is a sum with numbers of its own. */
export function isSum(kind: Kind): boolean {
  return SUM.test(kind);
}
