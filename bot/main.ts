import { randomBytes } from 'node:crypto';
import { ask } from '../commands/ask.ts';
import { commands } from '../commands/index.ts';
import { Problem } from '../core/problem.ts';
import { compileSooner } from './compile-sooner.ts';
import { loadEnvFile, readConfig } from './config.ts';
import type { Config } from './config.ts';
import { beat, heartbeatFile } from './heartbeat.ts';
import { logFailure, openLog } from './log.ts';
import type { Logger } from './log.ts';
import { memberFile, roomFile } from './store/files.ts';
import type { Store } from './store/open.ts';
import { LOCAL_PERSON } from './store/people.ts';
import { lazyReader } from './reader/load.ts';
import { openTalks } from './talks.ts';
import { localeOfEnv } from './terminal/locale.ts';
import { openTurns } from './turns.ts';
import { keepUp } from './upkeep.ts';

/** Settings that must be put right first (sysexits.h: EX_CONFIG): a supervisor should not start the bot again. */
const exitConfig = 78;
/** Leaving takes no longer than this, whatever hangs. */
const leaveMs = 9500;

async function openDiscord(token: string, config: Config, log: Logger): Promise<void> {
  compileSooner();
  const store = await openClosing(memberFile(config.dataDir), log);
  const { createBot } = await import('./discord/client.ts');
  const { reminderLoop } = await import('./discord/letters/reminders.ts');
  const { apiBase } = config;
  const { keepFor, settingsOf, changeSettings, due, held } = store;
  const kept = { keepFor, settingsOf, changeSettings, held, newHeldId };
  const turns = { turnOf: openTurns(Date.now), ...openTalks(Date.now, store.lastingCases) };
  const port = { toPng, token, apiBase, onRefused: refused };
  const parts = { commands, ask, reader: lazyReader, log, nowMs: Date.now, ...kept, ...turns, ...port };
  const bot = createBot({
    ...parts,
    servers: store,
    loop: reminderLoop({ token, apiBase, log, due, ...kept }),
  });
  onStopSignal(async () => {
    log.info('stopping');
    await bot.stop();
  });
  await bot.start();
  beat(heartbeatFile(config.dataDir), { isWell: bot.isConnected, nowMs: Date.now, log });
  keepUp(store, Date.now, log);
}

async function openTerminal({ dataDir }: Config, log: Logger): Promise<void> {
  const store = await openClosing(roomFile(dataDir));
  const { openRoom } = await import('./terminal/room.ts');
  onStopSignal(async () => {});
  const { stdin: input, stdout: output } = process;
  const reportFailure = (error: unknown): string => logFailure(log, error, 'an answer failed');
  const keep = store.keepFor(LOCAL_PERSON);
  const zone = Intl.DateTimeFormat().resolvedOptions().timeZone;
  const nowMs = Date.now;
  const locale = localeOfEnv(process.env);
  await openRoom({
    input,
    output,
    commands,
    ask,
    reader: lazyReader,
    nowMs,
    zone,
    locale,
    keep,
    dataDir,
    toPng,
    reportFailure,
  });
  input.destroy();
}

/** 72 random bits, in twelve letters. */
function newHeldId(): string {
  return randomBytes(9).toString('base64url');
}

/** The store, closed when the process ends, however it ends. */
async function openClosing(file: string, log?: Logger): Promise<Store> {
  const { openStore } = await import('./store/open.ts');
  const store = openStore({ file, nowMs: Date.now, log });
  process.once('exit', store.close);
  return store;
}

/** The drawing library is loaded with the first picture. */
async function toPng(svg: string): Promise<Uint8Array> {
  return (await import('./png.ts')).toPng(svg);
}

function onStopSignal(leave: () => Promise<void>): void {
  const stop = (): void => {
    setTimeout(() => process.exit(0), leaveMs);
    void leave().finally(() => process.exit(0));
  };
  process.once('SIGTERM', stop);
  process.once('SIGINT', stop);
}

function refused(problem: Problem): void {
  process.stderr.write(`${problem.message} ${problem.hint ?? ''}`.trim() + '\n');
  process.exit(exitConfig);
}

function watchErrors(log: Logger): void {
  process.on('unhandledRejection', (error) => logFailure(log, error, 'unhandled rejection'));
  process.on('uncaughtException', (error) => {
    log.fatal({ err: error }, 'uncaught exception');
    process.exit(1);
  });
}

async function main(): Promise<void> {
  loadEnvFile();
  const config = readConfig(process.env);
  const log = openLog(config.logLevel);
  watchErrors(log);
  try {
    if (config.token === undefined) await openTerminal(config, log);
    else await openDiscord(config.token, config, log);
  } catch (error) {
    if (error instanceof Problem) throw error;
    const errorId = logFailure(log, error, 'could not start');
    process.stderr.write(`The bot could not start; error ${errorId} in the log says why.\n`);
    process.exit(1);
  }
}

await main().catch((error: unknown) => {
  if (error instanceof Problem) refused(error);
  throw error;
});
