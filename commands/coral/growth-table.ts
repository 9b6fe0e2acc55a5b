import type { CoralEntry } from '../../core/corals/entry.ts';
import { diameterAfter, headsAfter } from '../../core/corals/growth.ts';
import { widthOfHeads } from '../../core/corals/heads.ts';
import { cmRange } from '../../core/corals/say.ts';
import type { Table } from '../answer.ts';

/** Months told. */
const TOLD_MONTHS = [3, 6, 12, 24] as const;

/** Heads that make up a width, at least one: `widthOfHeads` turned round. */
export function headsOf(entry: CoralEntry, diameterCm: number): number {
  return Math.max(1, Math.round((diameterCm / widthOfHeads(entry, 1).diameterCm) ** 2));
}

/** Width after each of the months; heads too where their pace is known and not too many to count. */
export function growthTable(entry: CoralEntry, diameterCm: number): Table {
  const heads = headsWords(entry, diameterCm);
  return {
    head: ['in', 'width', ...(heads === undefined ? [] : ['heads'])],
    rows: TOLD_MONTHS.map((months, index) => [
      `${months} months`,
      widthWords(entry, diameterCm, months),
      ...(heads === undefined ? [] : [heads[index] ?? '']),
    ]),
  };
}

export function widthWords(entry: CoralEntry, diameterCm: number, months: number): string {
  const { low, high } = diameterAfter(entry, diameterCm, months);
  return cmRange(low, high);
}

/** The most heads a start is counted from: beyond that the exponential is meaningless. */
const MOST_HEADS = 30;

function headsWords(entry: CoralEntry, diameterCm: number): readonly string[] | undefined {
  const now = headsOf(entry, diameterCm);
  if (now > MOST_HEADS || headsAfter(entry, now, 0) === undefined) return undefined;
  return TOLD_MONTHS.map((months) => {
    const after = headsAfter(entry, now, months);
    const [low, high] = [Math.round(after?.low ?? 0), Math.round(after?.high ?? 0)];
    return low === high ? String(low) : `${low} to ${high}`;
  });
}
