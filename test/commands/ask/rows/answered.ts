import { loadReader } from '../../../../bot/reader/load.ts';
import type { Answer } from '../../../../commands/answer.ts';
import type { Row } from '../../../../commands/ask/row.ts';
import { framesOf, type Frame } from '../../../../core/language/frame.ts';
import type { Kind } from '../../../../core/language/kinds.ts';

/** The frame of one kind that the real reader makes of a message. */
export function frameOf(kind: Kind, text: string): Frame {
  const found = framesOf(loadReader().read(text)).find((frame) => frame.kind === kind);
  if (found === undefined) throw new Error(`no frame of ${kind}`);
  return found;
}

/** What the row of a kind answers to a message, with nothing kept. */
export function answered(rows: readonly Row[], kind: Kind, text: string): Answer | undefined {
  const row = rows.find((each) => each.kind === kind);
  if (row === undefined) throw new Error(`no row for ${kind}`);
  return row.answer(frameOf(kind, text), { nowMs: 0, keep: undefined });
}
