import { parseArgs } from 'node:util';
import { REST } from 'discord.js';
import { commands } from '../../commands/index.ts';
import { Problem } from '../../core/problem.ts';
import { loadEnvFile, readConfig } from '../config.ts';
import { openLog } from '../log.ts';
import { definitions } from './definition.ts';
import { tokenRefusal } from './refusal.ts';
import { register } from './registration.ts';
import type { Scope } from './registration.ts';
import { restOptions } from './rest.ts';

const usage = 'Usage: npm run register -- --global | --guild ID [--dry]\n';
const exit = { failed: 1, usage: 64, config: 78 } as const;

function readArguments(): { scope: Scope; dry: boolean } | undefined {
  try {
    const options = {
      global: { type: 'boolean', default: false },
      guild: { type: 'string' },
      dry: { type: 'boolean', default: false },
    } as const;
    const { global, guild, dry } = parseArgs({ options }).values;
    if (global === (guild !== undefined)) return undefined;
    if (guild === undefined) return { scope: 'global', dry };
    return /^\d{17,20}$/.test(guild) ? { scope: { guild }, dry } : undefined;
  } catch {
    return undefined;
  }
}

async function main(): Promise<number> {
  const wanted = readArguments();
  if (wanted === undefined) {
    process.stderr.write(usage);
    return exit.usage;
  }
  loadEnvFile();
  const { token, apiBase } = readConfig(process.env);
  if (token === undefined) throw new Problem('DISCORD_TOKEN is missing.', { field: 'DISCORD_TOKEN' });
  const rest = new REST(restOptions(apiBase)).setToken(token);
  const change = await register(rest, definitions(commands), wanted.scope, wanted.dry);
  for (const [what, names] of Object.entries(change) as [string, readonly string[]][]) {
    process.stdout.write(`${what}: ${names.length === 0 ? 'none' : names.join(', ')}\n`);
  }
  const differs = change.added.length + change.changed.length + change.removed.length > 0;
  const end = !differs ? 'Nothing to write.' : wanted.dry ? 'Nothing written (--dry).' : 'Written.';
  process.stdout.write(`${end}\n`);
  return 0;
}

function failed(error: unknown): number {
  const problem = error instanceof Problem ? error : tokenRefusal(error);
  if (problem !== undefined) {
    process.stderr.write(`${problem.message} ${problem.hint ?? ''}`.trim() + '\n');
    return exit.config;
  }
  process.stderr.write('Discord did not take the registration; the log entry says why.\n');
  openLog('error').error({ err: error }, 'registration failed');
  return exit.failed;
}

process.exitCode = await main().catch(failed);
