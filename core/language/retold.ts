import { known, ofAsked, over, slotsOf, type Case, type Moment } from './case.ts';
import { cardTold } from './evidence.ts';
import type { Frame } from './frame.ts';
import { withoutLevels } from './goes-on.ts';
import type { Kind } from './kinds.ts';
import { withLentUnit } from './lent-unit.ts';
import { likelyIn } from './moment-of.ts';
import { withoutUndefined, type Slots } from './slots.ts';

/** A message taken as a kind its case speaks of: the card below it is that, or the one the whole case tells of. */
export function retold(
  frame: Frame,
  kind: Kind,
  slots: Slots,
  moments: readonly Moment[],
  card?: string,
): Frame {
  const { reading } = frame;
  const now: Moment = { atMs: 0, kind: frame.kind, slots: frame.slots, ...likelyIn([frame]) };
  const name = card ?? cardTold([...moments, now], kind);
  const cards = name === undefined ? reading.cards(kind) : [{ name, probability: 1 }];
  return {
    kind,
    cards,
    probability: 1,
    slots,
    rest: frame.rest,
    reading: {
      ...reading,
      kinds: [{ name: kind, probability: 1 }],
      cards: (below) => (below === kind ? cards : reading.cards(below)),
    },
  };
}

/**
 * All that is known of the member's own tank under what is said now: the levels of the parameter spoken of in their slots,
 * and never those of another.
 */
export function toldSlots(before: Case, earlier: Slots, now: Slots): Slots {
  const all = known(before);
  const of = now.of ?? earlier.of ?? ofAsked(before);
  const { levels } = over(all, { levels: now.levels });
  return withLentUnit({
    ...withoutLevels(all),
    ...withoutLevels(earlier),
    ...withLatest(all, earlier),
    ...withoutLevels(now),
    ...slotsOf(levels ?? [], of),
    ...(of === undefined ? {} : { of }),
    ...(levels === undefined ? {} : { levels }),
  });
}

/** What was put right after a question was asked: the water it is about and its vessel; the salt stays the one asked of. */
function withLatest({ volume, container }: Slots, { salt }: Slots): Slots {
  return withoutUndefined({ volume, container, salt });
}
