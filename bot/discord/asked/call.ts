import { heldId } from './held-id.ts';
import type { Command } from '../../../commands/command.ts';
import { optionsOf } from '../../../commands/options.ts';

/** A command and its options as text: what a button or a form holds. */
export interface Call {
  readonly command: string;
  readonly input: Readonly<Record<string, string>>;
  /** Options to be filled in in a form first. */
  readonly ask?: readonly string[];
}

const longestId = 100;
/** Fields of one form. */
export const mostAsked = 5;

/** Keeps a call and gives the short id it is found under; undefined where it cannot be kept. */
export type HoldCall = (call: Call) => string | undefined;

/**
 * The custom id of a button that runs `call` ("run:dose amount?of=calcium&now=380") or opens its form
 * ("ask:remind enter?reminder=12!readings"). One that is too long is held ("held:k3Vw9x"); undefined where it cannot be,
 * and for more than a form holds.
 */
export function callId(call: Call, hold: HoldCall = () => undefined): string | undefined {
  if ((call.ask?.length ?? 0) > mostAsked) return undefined;
  const id = wholeId(call);
  if (id.length <= longestId) return id;
  const short = hold(call);
  return short === undefined ? undefined : heldId(short);
}

/** The same, however long. */
export function wholeId({ command, input, ask = [] }: Call): string {
  const options = Object.entries(input).map(([name, value]) => `${code(name)}=${code(value)}`);
  const [prefix, asked] = ask.length === 0 ? ['run', ''] : ['ask', `!${ask.join(',')}`];
  return `${prefix}:${command}?${options.join('&')}${asked}`;
}

/** The call inside a custom id, or undefined if it is not one of ours. What it names need not exist. */
export function readCallId(id: string): Call | undefined {
  const [, prefix, command = '', rest = ''] = /^(run|ask):([^?]*)\?(.*)$/s.exec(id) ?? [];
  if (prefix === undefined) return undefined;
  const asks = prefix === 'ask';
  const end = asks ? rest.lastIndexOf('!') : rest.length;
  const input = end < 0 ? undefined : readQuery(rest.slice(0, end));
  if (input === undefined) return undefined;
  return asks ? { command, input, ask: rest.slice(end + 1).split(',') } : { command, input };
}

function readQuery(query: string): Call['input'] | undefined {
  const pairs = query === '' ? [] : query.split('&').map((pair) => pair.split('='));
  if (pairs.some((pair) => pair.length !== 2)) return undefined;
  try {
    const input = pairs.map(([name = '', value = '']) => [
      decodeURIComponent(name),
      decodeURIComponent(value),
    ]);
    return Object.fromEntries(input) as Record<string, string>;
  } catch {
    return undefined;
  }
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
