import type { Moment } from './case.ts';
import type { DangerKind } from './kind-groups.ts';
import type { Kind } from './kinds.ts';

/** How much less a message weighs for each later one; own choice, fitted on stories of nine to twelve messages. */
const FADES = 0.93;
/** What further messages add to the one that speaks most plainly; own choice, fitted in the same way. */
const FURTHER = 0.4;

/** Probability a message gave a kind. */
export function likelyAs({ kind, likely = [] }: Moment, asked: Kind): number {
  const found = likely.find((one) => one.kind === asked);
  return found?.probability ?? (kind === asked && likely.length === 0 ? 1 : 0);
}

/** How plainly a whole case speaks of a kind, 0 to about 1.5: its plainest message, and a share of the others. */
export function toldOf(moments: readonly Moment[], kind: Kind): number {
  const faded = moments.map((moment, at) => likelyAs(moment, kind) * FADES ** (moments.length - 1 - at));
  const most = Math.max(0, ...faded);
  const others = faded.reduce((sum, one) => sum + one, 0) - most;
  return most + FURTHER * Math.min(others, 1);
}

/** From this sum on a card was told; own choice. */
const TOLD = 0.5;

/** The card below a kind that a whole case speaks of: each message counts by how surely it is of that kind. */
export function cardTold(moments: readonly Moment[], kind: Kind): string | undefined {
  return ranked(moments, kind)[0]?.name;
}

/** All cards below a kind that a case tells of, the plainest first: several things go wrong at once. */
export function cardsTold(moments: readonly Moment[], kind: Kind, least = TOLD): readonly string[] {
  return ranked(moments, kind)
    .filter(({ sum }, at) => at === 0 || sum >= least)
    .map(({ name }) => name);
}

function ranked(
  moments: readonly Moment[],
  kind: Kind,
): readonly { readonly name: string; readonly sum: number }[] {
  const sums = new Map<string, number>();
  for (const { cards = [] } of moments)
    for (const { name, probability, kind: of } of cards)
      if (of === kind) sums.set(name, (sums.get(name) ?? 0) + probability);
  return [...sums].map(([name, sum]) => ({ name, sum })).toSorted((a, b) => b.sum - a.sum);
}

/** Probability that a person, or an animal or tank, is in danger by any message of a case, each for itself. */
export function dangerTold(moments: readonly Moment[], kind: DangerKind): number {
  return 1 - moments.reduce((none, moment) => none * (1 - Math.min(likelyAs(moment, kind), 0.99)), 1);
}
