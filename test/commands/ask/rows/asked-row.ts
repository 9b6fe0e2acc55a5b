import type { Answer } from '../../../../commands/answer.ts';
import type { OwnContext } from '../../../../commands/command.ts';
import type { Row } from '../../../../commands/ask/row.ts';
import type { Kind } from '../../../../core/language/kinds.ts';
import { say } from '../../../../core/wording/say.ts';
import { frameOf } from './asked.ts';

/** Wednesday, noon. */
export const NOBODY: OwnContext = { nowMs: Date.UTC(2026, 0, 7, 12), keep: undefined };

/** What the row of that kind answers, or the question it asks back. */
export function asked(rows: readonly Row[], kind: Kind, text: string, context = NOBODY): Answer | string {
  const row = rows.find((each) => each.kind === kind);
  if (row === undefined) throw new Error(`no row of ${kind}`);
  const frame = frameOf(kind, text);
  const need = row.needs?.find(
    ({ oneOf, when }) => (when?.(frame) ?? true) && oneOf.every((name) => frame.slots[name] === undefined),
  );
  const given = need === undefined ? row.answer(frame, context) : say(need.ask);
  if (given === undefined) throw new Error(`${kind} answers nothing to: ${text}`);
  return given;
}

/** The answer, where no question is asked back. */
export function answered(rows: readonly Row[], kind: Kind, text: string, context = NOBODY): Answer {
  const given = asked(rows, kind, text, context);
  if (typeof given === 'string') throw new Error(`asked back: ${given}`);
  return given;
}

export { textOf } from '../../text.ts';

/** The first number before a unit in a text. */
export function number(text: string, unit: string): number {
  return Number(new RegExp(`(\\d+(?:\\.\\d+)?) ${unit}`).exec(text)?.[1]);
}
