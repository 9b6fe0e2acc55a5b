import type { CoralEntry } from '../../core/corals/entry.ts';
import { diameterAfter, headsAfter } from '../../core/corals/growth.ts';
import { cmRange } from '../../core/corals/say.ts';
import { say } from '../../core/wording/say.ts';
import type { Table } from '../answer.ts';

/** Months told. */
export const TOLD_MONTHS = [3, 6, 12, 24] as const;

/** Width after each of the months; heads too for those that grow by heads. */
export function growthTable(entry: CoralEntry, diameterCm: number): Table {
  const rows = TOLD_MONTHS.map((months) => {
    const heads = headsAfter(entry, diameterCm, months);
    const counted = heads === undefined ? [] : [range(heads.low, heads.high)];
    return [`${months} months`, widthWords(entry, diameterCm, months), ...counted];
  });
  return {
    head: [
      say('coral.headIn'),
      say('coral.headWidth'),
      ...(rows[0]?.length === 3 ? [say('coral.headHeads')] : []),
    ],
    rows,
  };
}

export function widthWords(entry: CoralEntry, diameterCm: number, months: number): string {
  const { low, high } = diameterAfter(entry, diameterCm, months);
  return cmRange(low, high);
}

function range(low: number, high: number): string {
  return low === high ? String(low) : `${low} to ${high}`;
}
