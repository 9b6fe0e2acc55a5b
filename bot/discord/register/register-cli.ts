import { parseArgs } from 'node:util';
import { REST } from 'discord.js';
import { commands } from '../../../commands/index.ts';
import { Problem } from '../../../core/problem.ts';
import { readConfig } from '../../config.ts';
import { openLog } from '../../log.ts';
import { menus } from '../menu/menus.ts';
import { definitions, menuDefinitions } from './definition.ts';
import { tokenRefusal } from '../refusal.ts';
import { register } from './registration.ts';
import type { Change, Scope } from './registration.ts';
import { restOptions } from '../rest.ts';

/** Where the lines go. */
export interface Lines {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
}

const usage = 'Usage: npm run register -- --global | --guild ID [--dry]\n';
const exit = { failed: 1, usage: 64, config: 78 } as const;

/** Registers the commands with Discord as the arguments say; resolves with the exit code. */
export async function registerCli(
  args: readonly string[],
  env: NodeJS.ProcessEnv,
  { out, err }: Lines,
): Promise<number> {
  const asked = readArguments(args);
  if (asked === undefined) {
    err(usage);
    return exit.usage;
  }
  try {
    const { token, apiBase } = readConfig(env);
    if (token === undefined) throw new Problem('DISCORD_TOKEN is missing.', { field: 'DISCORD_TOKEN' });
    const rest = new REST(restOptions(apiBase)).setToken(token);
    const wanted = [...definitions(commands), ...menuDefinitions(menus)];
    out(report(await register(rest, wanted, asked.scope, asked.dry), asked.dry));
    return 0;
  } catch (error) {
    const problem = error instanceof Problem ? error : tokenRefusal(error);
    if (problem === undefined) {
      err('Discord did not take the registration; the log entry says why.\n');
      openLog('error', { write: err }).error({ err: error }, 'registration failed');
      return exit.failed;
    }
    err(`${`${problem.message} ${problem.hint ?? ''}`.trim()}\n`);
    return exit.config;
  }
}

function readArguments(args: readonly string[]): { scope: Scope; dry: boolean } | undefined {
  const options = {
    global: { type: 'boolean', default: false },
    guild: { type: 'string' },
    dry: { type: 'boolean', default: false },
  } as const;
  try {
    const { global, guild, dry } = parseArgs({ args: [...args], options }).values;
    if (global === (guild !== undefined)) return undefined;
    if (guild === undefined) return { scope: 'global', dry };
    return /^\d{17,20}$/.test(guild) ? { scope: { guild }, dry } : undefined;
  } catch {
    return undefined;
  }
}

function report({ added, changed, removed, unchanged }: Change, dry: boolean): string {
  const differs = added.length + changed.length + removed.length > 0;
  const lines = Object.entries({ added, changed, removed, unchanged }).map(
    ([what, names]) => `${what}: ${names.join(', ') || 'none'}`,
  );
  const end = !differs ? 'Nothing to write.' : dry ? 'Nothing written (--dry).' : 'Written.';
  return `${[...lines, end].join('\n')}\n`;
}
