import { existsSync } from 'node:fs';
import { z } from 'zod';
import { Problem } from '../core/problem.ts';
import { logLevels } from './log.ts';
import type { LogLevel } from './log.ts';

export interface Config {
  /** No token: the terminal room. */
  readonly token: string | undefined;
  /** Without version and trailing slash: "https://discord.com/api". */
  readonly apiBase: string;
  readonly dataDir: string;
  readonly logLevel: LogLevel;
}

const schema = z.object({
  DISCORD_TOKEN: z
    .string()
    .regex(/^[\x21-\x7e]+$/, 'a token has no spaces or special characters')
    .optional(),
  DISCORD_API_BASE: z.string().superRefine(checkBase).default('https://discord.com/api'),
  DATA_DIR: z.string().default('./var'),
  LOG_LEVEL: z.enum(logLevels).default('info'),
});

/**
 * The settings, from environment variables; an empty variable counts as absent.
 *
 * @throws Problem naming the variable that is wrong. It never repeats a value: one of them is the token.
 */
export function readConfig(env: Readonly<Record<string, string | undefined>>): Config {
  const given = Object.entries(env).map(([name, value]) => [name, value?.trim()] as const);
  const result = schema.safeParse(Object.fromEntries(given.filter(([, value]) => value)));
  if (!result.success) {
    const [issue] = result.error.issues;
    const field = String(issue?.path[0]);
    throw new Problem(`${field} is not right: ${issue?.message ?? ''}.`, { field });
  }
  const { DISCORD_TOKEN, DISCORD_API_BASE, DATA_DIR, LOG_LEVEL } = result.data;
  return { token: DISCORD_TOKEN, apiBase: DISCORD_API_BASE, dataDir: DATA_DIR, logLevel: LOG_LEVEL };
}

/** Takes settings from `.env` in the working directory, if it is there; variables already set win. */
export function loadEnvFile(): void {
  if (existsSync('.env')) process.loadEnvFile('.env');
}

function checkBase(value: string, context: z.RefinementCtx): void {
  const wrong = whatIsWrong(value);
  if (wrong !== undefined) context.addIssue({ code: 'custom', message: wrong });
}

function whatIsWrong(value: string): string | undefined {
  const url = URL.canParse(value) ? new URL(value) : undefined;
  if (url?.protocol !== 'http:' && url?.protocol !== 'https:') return 'it must be an http or https address';
  if (value.includes('?') || value.includes('#') || url.username !== '') return 'it must be a plain address';
  if (value.endsWith('/')) return 'leave out the slash at the end';
  if (/\/v\d+$/.test(value)) return 'leave out the version at the end';
  return undefined;
}
