import { openShortMemory } from '../../short-memory.ts';
import type { Held } from '../../store/held.ts';
import type { HeldDesk } from './holder.ts';

type Bodies = HeldDesk['held'];

const MOST_BRIEF = 500;
/** How long a draft and what it holds wait. */
export const BRIEF_MS = 15 * 60_000;

/** Holds in memory alone, and briefly: for answers to words that are somebody else's, which leave no trace. */
export function openBrief(nowMs: () => number): Bodies {
  const kept = openShortMemory<Held>(nowMs, MOST_BRIEF, BRIEF_MS);
  return {
    hold: (held) => kept.put(held.id, held),
    find: (id, kind, personId) => {
      const held = kept.get(id);
      return held?.kind === kind && (!held.isPrivate || held.personId === personId) ? held : undefined;
    },
  };
}

/** Holds in the store; what is held briefly is found as well. */
export function withBrief(store: Bodies, brief: Bodies): Bodies {
  return { hold: store.hold, find: (...which) => brief.find(...which) ?? store.find(...which) };
}
