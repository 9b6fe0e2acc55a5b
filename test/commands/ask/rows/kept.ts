import { noCase } from '../../../../core/language/case.ts';
import { loadReader } from '../../../../bot/reader/load.ts';
import { openStore } from '../../../../bot/store/open.ts';
import type { Answer } from '../../../../commands/answer.ts';
import type { Row } from '../../../../commands/ask/row.ts';
import type { Keep } from '../../../../commands/keep.ts';
import { framesOf } from '../../../../core/language/frame.ts';
import type { Kind } from '../../../../core/language/kinds.ts';

/** Monday 30 November 2026, 16:30 in Berlin. */
export const NOW_MS = Date.UTC(2026, 10, 30, 15, 30);
const DAY_MS = 86_400_000;

export interface Kept {
  readonly keep: Keep;
  /** What the row of a kind answers to a message; `before` is what was asked before it. */
  readonly says: (kind: Kind, text: string, before?: string) => Answer | undefined;
  readonly wait: (days: number) => void;
}

/** A member in Berlin with a tank, whose messages go through the real reader. */
export function kept(rows: readonly Row[]): Kept {
  let nowMs = NOW_MS;
  const store = openStore({ file: ':memory:', nowMs: () => nowMs });
  const keep = store.keepFor('100000000000000001');
  keep.addTank({
    name: 'Reef',
    kind: 'mixed',
    netVolumeL: 300,
    volumeBasis: 'counted',
    units: {},
    targets: {},
  });
  keep.setZone('Europe/Berlin');
  return {
    keep,
    says: (kind, text, before) => {
      const frame = framesOf(loadReader().read(text)).find((each) => each.kind === kind);
      const talk = {
        before: before === undefined ? undefined : { ...noCase, last: before },
        remember: () => undefined,
      };
      if (frame === undefined) return undefined;
      return rows.find((row) => row.kind === kind)?.answer(frame, { nowMs, keep, talk });
    },
    wait: (days) => {
      nowMs += days * DAY_MS;
    },
  };
}
