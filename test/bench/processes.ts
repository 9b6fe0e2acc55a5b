import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { readFileSync } from 'node:fs';
import { performance } from 'node:perf_hooks';
import { setTimeout as wait } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { REST, Routes } from 'discord.js';
import { definitions } from '../../bot/discord/register/definition.ts';
import { commands } from '../../commands/index.ts';
import { startStandIn, type StandIn } from '../discord/standin/server.ts';
import { applicationId } from '../discord/standin/world.ts';
import { quantiles, type Timing } from './measure.ts';
import { printRows } from './table.ts';

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));
const OURS = here('../../bot/main.js');
const BARE = here('./bare-bot.js');

/** From start of the process to the end of a room that was given one question. */
export async function benchStart(): Promise<void> {
  const values: number[] = [];
  for (let i = 0; i < 7; i++) {
    const start = performance.now();
    const child = spawn(process.execPath, [OURS], {
      stdio: ['pipe', 'pipe', 'inherit'],
      env: { ...process.env, DISCORD_TOKEN: '' },
    });
    child.stdin.write('/about\n');
    await once(child.stdout, 'data');
    values.push(performance.now() - start);
    child.stdin.end();
    await once(child, 'exit');
  }
  printRows('Start of the terminal room to its first answer', [
    { what: 'median of 7 starts', value: quantiles(values).p50, unit: 'ms', goal: 1500 },
  ]);
}

interface Load {
  readonly ack: Timing;
  readonly residentMb: number;
}

/** Members who ask in turn: no one faster than the bot allows. */
const PEOPLE = 500;
const idOf = (person: number): string => String(1_300_000_000_000_000_000n + BigInt(person));

const PER_SECOND = 50;
const SECONDS = 8;
/** Enough for both bots to run compiled code, as one that has been up for an hour does. */
const WARM_UP = 600;
/** Asked now and then before the measured part, so that the parser of sums is in memory as well. */
const SUM = '3 * 20 gal + 15 gal';

async function underLoad(standIn: StandIn, script: string): Promise<Load> {
  const env = {
    ...process.env,
    DISCORD_TOKEN: standIn.token,
    DISCORD_API_BASE: standIn.apiBase,
    LOG_LEVEL: 'silent',
  };
  const child = spawn(process.execPath, [script], { stdio: 'inherit', env });
  await standIn.until(() => (standIn.gateway.hasSession ? true : undefined), 'log in');
  await wait(500);
  for (let person = 0; person < PEOPLE; person++) standIn.world.addPerson(idOf(person), `Keeper ${person}`);
  let turn = 0;
  const ask = async (volume = '75 gal'): Promise<number> => {
    const options = { of: 'alkalinity', now: '7.2', goal: '8.4', with: 'soda ash', volume };
    const how = { subcommand: 'amount', userId: idOf(turn++ % PEOPLE) };
    const { elapsedMs } = await standIn.slash('dose', options, how).acknowledged;
    return elapsedMs;
  };
  for (let i = 0; i < WARM_UP; i++) await ask(i % 50 === 0 ? SUM : undefined);
  const pending: Promise<number>[] = [];
  for (let i = 0; i < PER_SECOND * SECONDS; i++) {
    pending.push(ask());
    await wait(1000 / PER_SECOND);
  }
  const ack = quantiles(await Promise.all(pending));
  const kb = /VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${child.pid}/status`, 'utf8'))?.[1];
  child.kill('SIGTERM');
  await once(child, 'exit');
  return { ack, residentMb: Number(kb) / 1024 };
}

/**
 * Acknowledgement (from delivery of the interaction to arrival of the callback) and memory beside a bare bot, taken in
 * turn so that both see the same machine.
 */
export async function benchDiscord(): Promise<void> {
  const ours: Load[] = [];
  const bare: Load[] = [];
  for (let round = 0; round < 3; round++) {
    for (const [script, into] of [
      [BARE, bare],
      [OURS, ours],
    ] as const) {
      const standIn = await startStandIn({ nowMs: () => performance.timeOrigin + performance.now() });
      const rest = new REST({ api: standIn.apiBase }).setToken(standIn.token);
      await rest.put(Routes.applicationCommands(applicationId), { body: definitions(commands) });
      into.push(await underLoad(standIn, script));
      if (standIn.violations.length > 0) throw new Error(JSON.stringify(standIn.violations[0]));
      await standIn.close();
    }
  }
  const middle = (loads: readonly Load[], of: (load: Load) => number): number => quantiles(loads.map(of)).p50;
  const pair = (what: string, of: (load: Load) => number, unit: string, goal: number) => [
    { what: `${what}, Sumpside`, value: middle(ours, of), unit },
    { what: `${what}, bare bot`, value: middle(bare, of), unit },
    { what: `${what}, ratio`, value: middle(ours, of) / middle(bare, of), unit: 'x', goal },
  ];
  printRows(`On the stand-in, ${PER_SECOND} interactions a second for ${SECONDS} s, middle of 3 rounds`, [
    ...pair('acknowledged, p50', ({ ack }) => ack.p50, 'ms', 1.3),
    ...pair('acknowledged, p99', ({ ack }) => ack.p99, 'ms', 1.3),
    ...pair('resident memory', ({ residentMb }) => residentMb, 'MB', 1.4),
  ]);
}
