import { loadReader } from '../../../../bot/reader/load.ts';
import type { Answer } from '../../../../commands/answer.ts';
import type { Row } from '../../../../commands/ask/row.ts';
import type { OwnContext } from '../../../../commands/command.ts';
import { framesOf, type Frame } from '../../../../core/language/frame.ts';
import type { Kind } from '../../../../core/language/kinds.ts';
import { say } from '../../../../core/wording/say.ts';

const nobody: OwnContext = { nowMs: 0, keep: undefined };

/** The message as one of that kind, read by the real reader. */
export function frameOf(kind: Kind, text: string): Frame {
  const found = framesOf(loadReader().read(text)).find((frame) => frame.kind === kind);
  if (found === undefined) throw new Error(`no frame of ${kind}`);
  return found;
}

/** What the row of that kind answers, or undefined. */
export function rowAnswer(
  rows: readonly Row[],
  kind: Kind,
  text: string,
  context = nobody,
): Answer | undefined {
  return rowOf(rows, kind).answer(frameOf(kind, text), context);
}

/** The question it asks back, if one of its needs is not met. */
export function askedBack(rows: readonly Row[], kind: Kind, text: string): string | undefined {
  const frame = frameOf(kind, text);
  const need = rowOf(rows, kind).needs?.find(
    ({ oneOf, when }) => oneOf.every((name) => frame.slots[name] === undefined) && when?.(frame) !== false,
  );
  return need && say(need.ask);
}

function rowOf(rows: readonly Row[], kind: Kind): Row {
  const row = rows.find((one) => one.kind === kind);
  if (row === undefined) throw new Error(`no row of ${kind}`);
  return row;
}
