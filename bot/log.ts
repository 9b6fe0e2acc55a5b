import { randomBytes } from 'node:crypto';
import { pino } from 'pino';
import type { DestinationStream, Logger } from 'pino';

export type { Logger } from 'pino';

export const logLevels = ['debug', 'info', 'warn', 'error', 'fatal', 'silent'] as const;
export type LogLevel = (typeof logLevels)[number];

/** A logger of one JSON object a line, on stderr unless told otherwise; writes at once, so nothing is lost at exit. */
export function openLog(level: LogLevel, destination?: DestinationStream): Logger {
  const options = { level, base: null, serializers: { err: withoutWords } };
  return pino(options, destination ?? pino.destination({ dest: 2, sync: true }));
}

/** Eight characters that tie what a member sees to an entry of the log. */
export function newErrorId(): string {
  return randomBytes(4).toString('hex');
}

/** Logs an unexpected error under a new id and returns the id. `ids` are ids only, never what someone wrote. */
export function logFailure(
  log: Logger,
  error: unknown,
  what: string,
  ids: Readonly<Record<string, unknown>> = {},
): string {
  const errorId = newErrorId();
  log.error({ errorId, ...ids, err: error }, what);
  return errorId;
}

interface LoggedError {
  readonly name: string;
  readonly code?: string | number;
  readonly status?: number;
  readonly stack?: string;
  readonly cause?: LoggedError;
}

/** An error without its message, address and body: those can hold a token or what a member wrote. */
function withoutWords(error: unknown, depth = 0): LoggedError {
  if (!(error instanceof Error)) return { name: typeof error };
  const { code, status } = error as { code?: unknown; status?: unknown };
  return {
    name: error.name,
    ...(typeof code === 'string' || typeof code === 'number' ? { code } : {}),
    ...(typeof status === 'number' ? { status } : {}),
    stack: frames(error),
    ...(error.cause === undefined || depth > 2 ? {} : { cause: withoutWords(error.cause, depth + 1) }),
  };
}

function frames(error: Error): string {
  const stack = error.stack ?? '';
  const start = error.message === '' ? 0 : stack.indexOf(error.message) + error.message.length;
  const lines = stack.slice(start).split('\n');
  return lines.filter((line) => line.startsWith('    at ')).join('\n');
}
