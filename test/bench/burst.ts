import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { setTimeout as wait } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { REST, Routes } from 'discord.js';
import { definitions } from '../../bot/discord/register/definition.ts';
import { memberFile } from '../../bot/store/files.ts';
import { openStore } from '../../bot/store/open.ts';
import { commands } from '../../commands/index.ts';
import { mostInASecond } from '../discord/standin/rate.ts';
import { startStandIn, type StandIn } from '../discord/standin/server.ts';
import { applicationId } from '../discord/standin/world.ts';
import { quantiles } from './measure.ts';
import { printRows } from './table.ts';

const BOT = fileURLToPath(new URL('../../bot/main.js', import.meta.url));
const DUE = 5000;
const SPREAD_MS = 60_000;
const ASKED_PER_SECOND = 5;
/** Discord's documented limit of requests a second in all, and how long it waits for the first callback. */
const MOST_PER_SECOND = 50;
const MOST_ACK_MS = 3000;
const PATIENCE_MS = 900_000;

const idOf = (person: number): string => String(1_100_000_000_000_100_000n + BigInt(person));

const nowMs = (): number => performance.timeOrigin + performance.now();

/** 5,000 reminders of 5,000 people due in one minute, on the stand-in, while others ask. */
export async function benchBurst(): Promise<void> {
  const dataDir = mkdtempSync(join(tmpdir(), 'bench-'));
  const standIn = await startStandIn({ nowMs, enforceGlobalLimit: true });
  try {
    const rest = new REST({ api: standIn.apiBase }).setToken(standIn.token);
    await rest.put(Routes.applicationCommands(applicationId), { body: definitions(commands) });
    await measure(standIn, dataDir);
  } finally {
    await standIn.close();
    rmSync(dataDir, { recursive: true });
  }
}

async function measure(standIn: StandIn, dataDir: string): Promise<void> {
  const startMs = fill(memberFile(dataDir));
  const { token, apiBase } = standIn;
  const env = { ...process.env, DISCORD_TOKEN: token, DISCORD_API_BASE: apiBase, DATA_DIR: dataDir };
  const child = spawn(process.execPath, [BOT], { stdio: 'inherit', env: { ...env, LOG_LEVEL: 'silent' } });
  await standIn.until(() => (standIn.gateway.hasSession ? true : undefined), 'log in');
  for (let person = 0; person < DUE; person++) standIn.world.addPerson(idOf(person), `Keeper ${person}`);
  const options = { of: 'alkalinity', now: '7.2', goal: '8.4', with: 'soda ash', volume: '75 gal' };
  await wait(Math.max(0, startMs - nowMs()));
  const asked: Promise<{ readonly elapsedMs: number }>[] = [];
  while (standIn.sent.length < DUE && nowMs() < startMs + PATIENCE_MS) {
    const how = { subcommand: 'amount', userId: idOf(asked.length % DUE) };
    asked.push(standIn.slash('dose', options, how).acknowledged);
    await wait(1000 / ASKED_PER_SECOND);
  }
  const acks = quantiles((await Promise.all(asked)).map(({ elapsedMs }) => elapsedMs));
  const kb = /VmHWM:\s+(\d+)/.exec(readFileSync(`/proc/${child.pid}/status`, 'utf8'))?.[1];
  child.kill('SIGTERM');
  await once(child, 'exit');
  const { sent, requests, rateBreaches, violations } = standIn;
  const nonces = new Set(sent.map(({ body }) => body['nonce']));
  if (violations.length > 0 || sent.length !== DUE || nonces.size !== DUE)
    throw new Error(
      `${sent.length} sent, ${nonces.size} of them different, ${JSON.stringify(violations[0])}`,
    );
  const lastMs = Math.max(...sent.map(({ atMs }) => atMs));
  printRows(
    `${DUE} reminders due within ${SPREAD_MS / 1000} s, ${ASKED_PER_SECOND} questions a second meanwhile`,
    [
      { what: 'from the first due to the last sent', value: (lastMs - startMs) / 1000, unit: 's' },
      {
        what: 'requests, most in any second',
        value: mostInASecond(requests),
        unit: '',
        goal: MOST_PER_SECOND,
      },
      { what: 'requests refused for their rate', value: rateBreaches.length, unit: '', goal: 0 },
      { what: `acknowledged, p50 of ${asked.length}`, value: acks.p50, unit: 'ms' },
      { what: 'acknowledged, p99', value: acks.p99, unit: 'ms' },
      { what: 'acknowledged, slowest', value: acks.most, unit: 'ms', goal: MOST_ACK_MS },
      { what: 'resident memory, most', value: Number(kb) / 1024, unit: 'MB' },
    ],
  );
}

/** Reminders that are due from some seconds on, one a person; returns when the first is due. */
function fill(file: string): number {
  const store = openStore({ file, nowMs: Date.now });
  const plan = {
    text: 'test alkalinity',
    parameters: ['alkalinity'],
    zone: 'UTC',
    anchor: '2026-01-05 09:00',
  } as const;
  const whole = { ...plan, rule: { every: 'once' }, place: { kind: 'direct' } } as const;
  const added = Array.from({ length: DUE }, (_, person) =>
    store.keepFor(idOf(person)).addReminder(whole, {}),
  );
  const startMs = Math.ceil(nowMs()) + 20_000;
  for (const [person, { id, anchor }] of added.entries()) {
    const nextMs = startMs + Math.floor((person * SPREAD_MS) / DUE);
    store.keepFor(idOf(person)).moveReminder(id, anchor, { nextMs });
  }
  store.close();
  return startMs;
}
