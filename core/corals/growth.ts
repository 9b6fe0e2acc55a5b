import { inRange } from '../problem.ts';
import { basisWords } from './basis-words.ts';
import type { Bases } from './basis.ts';
import type { CoralEntry } from './entry.ts';
import { headsIn, widthOfHeads } from './heads.ts';
import { downCm, upCm } from './say.ts';
import type { Placed } from './scene.ts';

/** Further ahead than this nothing is said, months: project rule. */
export const LONGEST_MONTHS = 60;

export interface GrowthRange {
  readonly low: number;
  readonly high: number;
  readonly basis: string;
}

/** A piece of few heads has at most so many times as many after a good first year: common practice, three to six times. */
const TIMES_IN_FIRST_YEAR = 6;
/** It has six heads at most that way: common practice, said of one or two heads; a larger one is held by its room. */
const MOST_IN_FIRST_YEAR = 6;

const headsBasis: Bases = [
  { kind: 'practice', note: 'three to six times the heads in a good first year, slower later' },
  { kind: 'project rule', note: 'as many as have their place in the width' },
];

/** How much wider a colony gets in a year, cm of diameter. */
interface Widening {
  readonly lowCm: number;
  readonly highCm: number;
  /** In the first year: more for a piece of few heads, which multiplies. */
  readonly firstYearHighCm: number;
}

/**
 * Growth of the diameter, cm per year. A recalled range is taken as diameter. The published wild values mix diameter
 * with growth of one edge or branch, so there the low end is taken as diameter and the high end as an edge: twice that
 * in diameter. Published 4 to 15.3 -> 4 to 30.6; recalled 2 to 5 -> 2 to 5. A branching torch or the like of few heads
 * may reach the width of six times as many, six at most, in its first year: one head of 7 cm -> six heads, 17.2 cm.
 */
function widening(entry: CoralEntry, diameterCm: number): Widening {
  const highCm = 2 * edgeCmPerYear(entry);
  const heads = Math.min(TIMES_IN_FIRST_YEAR * headsIn(entry, diameterCm), MOST_IN_FIRST_YEAR);
  const multipliedCm = growsByHeads(entry) ? widthOfHeads(entry, heads).diameterCm - diameterCm : 0;
  return { lowCm: entry.growth.lowCmPerYear, highCm, firstYearHighCm: Math.max(highCm, multipliedCm) };
}

/** How far an edge of the colony moves out in a year at most, cm: half of a recalled range, a published value whole. */
export function edgeCmPerYear({ growth }: CoralEntry): number {
  return growth.range === 'recalled' ? growth.highCmPerYear / 2 : growth.highCmPerYear;
}

/** Branching torches, hammers, frogspawns and octospawns. */
function growsByHeads({ tags, form }: CoralEntry): boolean {
  const euphylliid = tags.some((tag) => ['torch', 'hammer', 'frogspawn', 'octospawn'].includes(tag));
  return euphylliid && form.kinds.includes('branching');
}

/**
 * Width after `months` (0 to `LONGEST_MONTHS`) from `diameterCm` now, as a range, both ends rounded outwards to what is
 * printed: straight-line growth by the entry's cm per year. It does not stop at its usual width in a tank: there a
 * keeper trims. Check: 5 cm at 2 to 5 cm a year -> 7 to 10 cm.
 *
 * Doubt: growth in a tank hangs on light, food and alkalinity, and frags often stand still for weeks first.
 */
export function diameterAfter(entry: CoralEntry, diameterCm: number, months: number): GrowthRange {
  const years = inRange('months', months, 0, LONGEST_MONTHS, 'months') / 12;
  const { lowCm, highCm, firstYearHighCm } = widening(entry, diameterCm);
  const byHeads = firstYearHighCm > highCm;
  return {
    low: downCm(diameterCm + lowCm * years),
    high: upCm(diameterCm + firstYearHighCm * Math.min(1, years) + highCm * Math.max(0, years - 1)),
    basis: basisWords(entry.growth.basis, ...(byHeads ? [headsBasis] : []), [
      { kind: 'project rule', note: 'straight line' },
    ]),
  };
}

/**
 * Heads of a branching torch, hammer, frogspawn or octospawn after `months`: as many as have their place in the width by
 * then, as a range; undefined for other kinds. Check: one head, 7 cm -> 1 to 6 in a year; two, 9.9 cm -> 2 to 6.
 */
export function headsAfter(entry: CoralEntry, diameterCm: number, months: number): GrowthRange | undefined {
  if (!growsByHeads(entry)) return undefined;
  const { low, high } = diameterAfter(entry, diameterCm, months);
  return { low: headsIn(entry, low), high: headsIn(entry, high), basis: basisWords(headsBasis) };
}

/** Months from now; `latest` is absent when slow growth does not get there within `LONGEST_MONTHS`. */
export interface Months {
  readonly soonest: number;
  readonly latest?: number | undefined;
}

/**
 * Months until the gap between two corals, `gapCm` now, has shrunk to `untilCm` (0: they meet), by both growing towards
 * each other at their high and at their low rate. undefined: not within `LONGEST_MONTHS` even at the high rate. Check:
 * 6 cm apart, each 2 to 4 cm a year wider -> each edge 1 to 2 cm a year -> 18 to 36 months.
 */
export function monthsUntil(a: Placed, b: Placed, gapCm: number, untilCm = 0): Months | undefined {
  const toClose = gapCm - untilCm;
  if (toClose <= 0) return { soonest: 0, latest: 0 };
  const both = (end: keyof Widening): number =>
    (widening(a.entry, a.diameterCm)[end] + widening(b.entry, b.diameterCm)[end]) / 2;
  const soonest = monthsAt(toClose, both('firstYearHighCm'), both('highCm'));
  if (soonest === undefined) return undefined;
  return { soonest, latest: monthsAt(toClose, both('lowCm'), both('lowCm')) };
}

/** The most an edge moves out in a year, cm. */
export function fastestEdgeCmPerYear({ entry, diameterCm }: Placed): number {
  return widening(entry, diameterCm).firstYearHighCm / 2;
}

/** The month in which two edges have covered a distance together, each by so much in its first year and in later ones. */
function monthsAt(cm: number, firstYearCm: number, laterCm: number): number | undefined {
  const years = cm <= firstYearCm ? cm / firstYearCm : 1 + (cm - firstYearCm) / laterCm;
  return years * 12 <= LONGEST_MONTHS ? years * 12 : undefined;
}
