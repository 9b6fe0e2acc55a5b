import { absent, type Json } from '../json.ts';
import type { FilePart } from '../multipart.ts';
import { invalidForm, type Issue, type Spot, spot } from '../spot.ts';
import type { State } from '../state.ts';

export interface Call {
  readonly state: State;
  readonly method: string;
  readonly path: string;
  readonly params: Readonly<Record<string, string>>;
  readonly query: URLSearchParams;
  readonly body: unknown;
  readonly files: readonly FilePart[];
}

export interface Reply {
  readonly status: number;
  readonly body?: unknown;
}

export interface Route {
  readonly method: string;
  /** `/channels/:channel/messages` */
  readonly pattern: string;
  /** Needs no bot token and does not count against the global rate: the address holds a token of its own. */
  readonly open?: boolean;
  readonly handle: (call: Call) => Reply;
}

export const ok = (body: unknown): Reply => ({ status: 200, body });
export const nothing: Reply = { status: 204 };

export function refuse(status: number, code: number, message: string): Reply {
  return { status, body: { message, code } };
}

/** Runs the checks, records what they find, and gives the refusal if they found anything. */
export function checked(call: Call, check: (here: Spot) => void): Reply | undefined {
  const issues: Issue[] = [];
  check(spot(issues));
  if (issues.length === 0) return undefined;
  for (const issue of issues) {
    call.state.violations.push({ ...issue, method: call.method, route: call.path });
  }
  const empty = issues.every((issue) => issue.rule === 'message.empty');
  return empty
    ? refuse(400, 50006, 'Cannot send an empty message')
    : { status: 400, body: invalidForm(issues) };
}

/** The parameters of a path that fits a pattern. */
export function matchPath(pattern: string, path: string): Record<string, string> | undefined {
  const wanted = pattern.split('/');
  const given = path.split('/');
  if (wanted.length !== given.length) return undefined;
  const params: Record<string, string> = {};
  for (const [index, part] of wanted.entries()) {
    const value = given[index] ?? '';
    if (part.startsWith(':')) params[part.slice(1)] = decodeURIComponent(value);
    else if (part !== value) return undefined;
  }
  return params;
}

/** A parameter the pattern is known to have. */
export function param(call: Call, name: string): string {
  const value = call.params[name];
  if (absent(value)) throw new Error(`The route has no :${name}`);
  return value;
}

export function bodyOf(call: Call): Json {
  return typeof call.body === 'object' && call.body !== null ? (call.body as Json) : {};
}
