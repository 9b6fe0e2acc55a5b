import type { NextAction } from '../../commands/answer.ts';
import type { Command } from '../../commands/command.ts';
import { optionsOf } from '../../commands/options.ts';

/** A command and its options as text: what a button holds. */
export interface Call {
  readonly command: string;
  readonly input: Readonly<Record<string, string>>;
}

const prefix = 'run:';
const longestId = 100;

/** The custom id of a button that runs `call` ("run:dose amount?of=calcium&now=380"), or undefined if too long. */
export function callId(call: Call): string | undefined {
  const options = Object.entries(call.input).map(([name, value]) => `${code(name)}=${code(value)}`);
  const id = `${prefix}${call.command}?${options.join('&')}`;
  return id.length <= longestId ? id : undefined;
}

/** The call inside a custom id, or undefined if it is not one of ours. */
export function readCallId(id: string): Call | undefined {
  const found = /^run:([^?]*)\?(.*)$/s.exec(id);
  if (found === null) return undefined;
  const [, command = '', query = ''] = found;
  const pairs = query === '' ? [] : query.split('&').map((pair) => pair.split('='));
  if (pairs.some((pair) => pair.length !== 2)) return undefined;
  try {
    const input = pairs.map(([name = '', value = '']) => [
      decodeURIComponent(name),
      decodeURIComponent(value),
    ]);
    return { command, input: Object.fromEntries(input) as Record<string, string> };
  } catch {
    return undefined;
  }
}

/** The line a member can type for the same: "/dose amount of:calcium now:380". */
export function callLine({ command, input }: Call | NextAction): string {
  return [`/${command}`, ...Object.entries(input).map(([name, value]) => `${name}:${value}`)].join(' ');
}

/** Options held as text, in the kinds the command's schema wants. */
export function typedInput(command: Command, input: Call['input']): Record<string, unknown> {
  const kinds = new Map(optionsOf(command.options).map((option) => [option.name, option.kind]));
  return Object.fromEntries(
    Object.entries(input).map(([name, value]) => [name, typed(value, kinds.get(name))]),
  );
}

function typed(value: string, kind: string | undefined): unknown {
  if (kind === 'boolean') return value === 'true' ? true : value === 'false' ? false : value;
  if (kind !== 'number' && kind !== 'integer') return value;
  const number = Number(value);
  return value.trim() === '' || Number.isNaN(number) ? value : number;
}

/** Percent-codes only what would be misread; all else stays short. */
function code(text: string): string {
  return text.replace(/[%&=?]/g, encodeURIComponent);
}
