import type { Frame } from '../language/frame.ts';
import { met } from '../language/met.ts';
import type { Scanned } from '../language/tokens.ts';
import type { Way } from './house-cards/way.ts';

/** Cards of the house that a message can mean. */
export interface Meant<Id extends string> {
  /** The one to answer with; undefined where none is clear. */
  readonly first: Id | undefined;
  /** The share of the likeliest, 0 to 1. */
  readonly share: number;
  /** The others in question, likeliest first. */
  readonly others: readonly Id[];
  /** Every card it may be, likeliest first: one alone where its share is `ahead` of the next. */
  readonly near: readonly Id[];
}

/** From this share of its kind's cards one is clear; less of it is a question. Own choice. */
const CLEAR = 0.5;
/** Cards nearer to the first than this are as likely as it; own choice. */
const MARGIN = 0.2;
/** Less likely ones, and more than these, are not named. Own choices. */
const LEAST = 0.08;
const MOST_OTHERS = 3;

/**
 * The cards of the house for the learnt ones, by what was met. Of several that are about as likely, the one that stands
 * first in `byDanger` leads, and the others are offered.
 */
export function meantCards<Id extends string>(
  learnt: Frame['cards'],
  ways: Readonly<Record<string, readonly Way<Id>[]>>,
  scanned: Scanned,
  byDanger: readonly Id[],
  ahead = 0,
): Meant<Id> {
  const shares = new Map<Id, number>();
  for (const { name, probability } of learnt) {
    const card = ways[name]?.find((way) => fits(way, scanned))?.card;
    if (card !== undefined) shares.set(card, (shares.get(card) ?? 0) + probability);
  }
  const likely = [...shares].filter(([, share]) => share >= LEAST).sort((a, b) => b[1] - a[1]);
  const most = likely[0]?.[1] ?? 0;
  const close = likely.filter(([, share]) => share > most - MARGIN).map(([id]) => id);
  const [first] = close.sort((a, b) => placeIn(byDanger, a) - placeIn(byDanger, b));
  const isClear = most >= CLEAR;
  const ids = likely.map(([id]) => id);
  const others = ids.filter((id) => !isClear || id !== first);
  const isAhead = most - (likely[1]?.[1] ?? 0) >= ahead;
  return {
    first: isClear ? first : undefined,
    share: most,
    others: others.slice(0, MOST_OTHERS),
    near: ids.slice(0, isAhead ? 1 : MOST_OTHERS),
  };
}

/** Whether what was met in a message fits a way. */
export function fits({ if: one, and, unless = [] }: Way<string>, scanned: Scanned): boolean {
  return (
    (one === undefined || met(scanned, ...one)) &&
    (and === undefined || met(scanned, ...and)) &&
    !met(scanned, ...unless)
  );
}

/** What is not in the list comes last. */
export function placeIn<Id>(list: readonly Id[], id: Id): number {
  const at = list.indexOf(id);
  return at < 0 ? list.length : at;
}
