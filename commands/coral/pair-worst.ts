import type { CoralEntry } from '../../core/corals/entry.ts';
import type { NamedCoral } from '../../core/corals/named.ts';
import { pairRoom, type PairRoom } from '../../core/corals/pair-room.ts';
import { clearOfCm, spreaderOf } from '../../core/corals/spreading.ts';

/** Two corals beside each other and the room they want, cm edge to edge at full stretch. */
export interface Pair {
  readonly a: CoralEntry;
  readonly b: CoralEntry;
  readonly room: PairRoom;
  /** The one that grows over the other. */
  readonly spreads: CoralEntry | undefined;
  readonly moveBelowCm: number;
  readonly watchBelowCm: number;
}

/** Of all that the two names can mean, the pair that wants most room. */
export function worstOf(one: NamedCoral, other: NamedCoral): Pair {
  const pairs =
    one === other
      ? one.entries.map((a) => pairOf(a, a))
      : one.entries.flatMap((a) => other.entries.map((b): Pair => pairOf(a, b)));
  const [first, ...rest] = pairs;
  if (first === undefined) throw new Error('a name without a coral');
  return rest.reduce((worst, pair) => (wants(pair) > wants(worst) ? pair : worst), first);
}

function pairOf(a: CoralEntry, b: CoralEntry): Pair {
  const room = pairRoom(a, b);
  const spreads = spreaderOf(a, b);
  const clearCm = spreads === undefined ? 0 : clearOfCm(spreads);
  const { moveBelowCm, watchBelowCm } = room;
  return { a, b, room, spreads, moveBelowCm, watchBelowCm: Math.max(watchBelowCm, clearCm) };
}

export function wants({ moveBelowCm, watchBelowCm }: Pair): number {
  return moveBelowCm * 1000 + watchBelowCm;
}
