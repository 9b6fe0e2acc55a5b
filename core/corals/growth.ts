import { inRange } from '../problem.ts';
import { basisWords } from './basis-words.ts';
import type { Bases } from './basis.ts';
import type { CoralEntry } from './entry.ts';
import { widthOfHeads } from './heads.ts';
import type { Placed } from './scene.ts';

/** Further ahead than this nothing is said, months: project rule. */
export const LONGEST_MONTHS = 60;

export interface GrowthRange {
  readonly low: number;
  readonly high: number;
  readonly basis: string;
}

const headsBasis: Bases = [
  { kind: 'practice', note: 'one or two heads become about six in the first year, then roughly exponential' },
];
/** Six heads from two and six heads from one: how many times over in a year. */
const HEADS_A_YEAR = { low: 3, high: 6 } as const;

/** Heads of one or two after the first year: common practice. */
const FIRST_YEAR_HEADS = 6;

/** How much wider a colony gets in a year, cm of diameter. */
interface Widening {
  readonly lowCm: number;
  readonly highCm: number;
  /** In the first year: more for a piece of one or two heads, which becomes about six. */
  readonly firstYearHighCm: number;
}

/**
 * Growth of the diameter, cm per year. A recalled range is taken as diameter. The published wild values mix diameter
 * with growth of one edge or branch, so there the low end is taken as diameter and the high end as an edge: twice that
 * in diameter. Published 4 to 15.3 -> 4 to 30.6; recalled 2 to 5 -> 2 to 5. A branching torch or the like of one or two
 * heads may reach the width of six in its first year: 10 cm at 2 to 5 a year, two heads of 9.9 cm -> 17.1 cm.
 */
function widening(entry: CoralEntry, diameterCm: number): Widening {
  const { growth } = entry;
  const edges = growth.range === 'recalled' ? 1 : 2;
  const highCm = growth.highCmPerYear * edges;
  const isSmall = growsByHeads(entry) && diameterCm <= widthOfHeads(entry, 2).diameterCm;
  const sixHeadsCm = isSmall ? widthOfHeads(entry, FIRST_YEAR_HEADS).diameterCm - diameterCm : 0;
  return { lowCm: growth.lowCmPerYear, highCm, firstYearHighCm: Math.max(highCm, sixHeadsCm) };
}

/** Branching torches, hammers, frogspawns and octospawns. */
function growsByHeads({ tags, form }: CoralEntry): boolean {
  const euphylliid = tags.some((tag) => ['torch', 'hammer', 'frogspawn', 'octospawn'].includes(tag));
  return euphylliid && form.kinds.includes('branching');
}

/**
 * Width after `months` (0 to `LONGEST_MONTHS`) from `diameterCm` now, as a range: straight-line growth by the entry's cm
 * per year up to its practical width in a tank (never less than now). Check: 5 cm at 2 to 5 cm a year -> 7 to 10 cm.
 *
 * Doubt: growth in a tank hangs on light, food and alkalinity, and frags often stand still for weeks first.
 */
export function diameterAfter(entry: CoralEntry, diameterCm: number, months: number): GrowthRange {
  const years = inRange('months', months, 0, LONGEST_MONTHS, 'months') / 12;
  const { lowCm, highCm, firstYearHighCm } = widening(entry, diameterCm);
  const byHeads = firstYearHighCm > highCm;
  const most = Math.max(diameterCm, entry.size.practicalMaxCm);
  return {
    low: Math.min(most, diameterCm + lowCm * years),
    high: Math.min(most, diameterCm + firstYearHighCm * Math.min(1, years) + highCm * Math.max(0, years - 1)),
    basis: basisWords(entry.growth.basis, ...(byHeads ? [headsBasis] : []), [
      { kind: 'project rule', note: 'straight line to its usual width' },
    ]),
  };
}

/**
 * Heads of a branching torch, hammer, frogspawn or octospawn after `months`, as a range; undefined for other kinds. One
 * or two heads become about six in a year (common practice), which is 3 to 6 times; kept on as exponential. Check: 1
 * head -> 3 to 6 in a year, 2 heads -> 6 to 12. Doubt: after two years food and room set the pace, so it runs high.
 */
export function headsAfter(entry: CoralEntry, heads: number, months: number): GrowthRange | undefined {
  if (!growsByHeads(entry)) return undefined;
  const years = inRange('months', months, 0, LONGEST_MONTHS, 'months') / 12;
  const now = inRange('heads', heads, 1, 200, 'heads');
  return {
    low: now * HEADS_A_YEAR.low ** years,
    high: now * HEADS_A_YEAR.high ** years,
    basis: basisWords(headsBasis),
  };
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
  const soonest = monthsAt(toClose, edgeOf(a, 'firstYearHighCm'), edgeOf(b, 'firstYearHighCm'));
  if (soonest === undefined) return undefined;
  return { soonest, latest: monthsAt(toClose, edgeOf(a, 'lowCm'), edgeOf(b, 'lowCm')) };
}

/** The most an edge moves out in a year, cm. */
export function fastestEdgeCmPerYear({ entry, diameterCm }: Placed): number {
  return widening(entry, diameterCm).firstYearHighCm / 2;
}

/** How fast an edge moves out, cm per month, and how far it will before the coral has its usual width. */
interface Edge {
  readonly cmPerMonth: number;
  readonly roomCm: number;
}

function edgeOf({ entry, diameterCm }: Placed, end: keyof Widening): Edge {
  return {
    cmPerMonth: widening(entry, diameterCm)[end] / 24,
    roomCm: Math.max(0, entry.size.practicalMaxCm - diameterCm) / 2,
  };
}

/** The first month at which two edges have covered the distance together; each stops where its room ends. */
function monthsAt(cm: number, one: Edge, other: Edge): number | undefined {
  const stop = ({ cmPerMonth, roomCm }: Edge): number => (cmPerMonth > 0 ? roomCm / cmPerMonth : 0);
  const [first, second] = stop(one) <= stop(other) ? [one, other] : [other, one];
  const covered = first.cmPerMonth > 0 ? first.roomCm : 0;
  const together = cm / (first.cmPerMonth + second.cmPerMonth);
  const months = together <= stop(first) ? together : (cm - covered) / second.cmPerMonth;
  const reached = months <= stop(second) + 1e-9 || together <= stop(first);
  return reached && months <= LONGEST_MONTHS ? months : undefined;
}
