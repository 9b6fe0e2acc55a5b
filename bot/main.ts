import { ask } from '../commands/ask.ts';
import { commands } from '../commands/index.ts';
import { Problem } from '../core/problem.ts';
import { loadEnvFile, readConfig } from './config.ts';
import type { Config } from './config.ts';
import { logFailure, openLog } from './log.ts';
import type { Logger } from './log.ts';

/** Settings that must be put right first (sysexits.h: EX_CONFIG): a supervisor should not start the bot again. */
const exitConfig = 78;
/** Leaving takes no longer than this, whatever hangs. */
const leaveMs = 9500;

async function openDiscord(token: string, config: Config, log: Logger): Promise<void> {
  const { createBot } = await import('./discord/client.ts');
  const { apiBase } = config;
  const bot = createBot({ commands, ask, log, nowMs: Date.now, token, apiBase, onRefused: refused });
  onStopSignal(async () => {
    log.info('stopping');
    await bot.stop();
  });
  await bot.start();
}

async function openTerminal(log: Logger): Promise<void> {
  const { openRoom } = await import('./terminal/room.ts');
  onStopSignal(async () => {});
  const { stdin: input, stdout: output } = process;
  const reportFailure = (error: unknown): string => logFailure(log, error, 'an answer failed');
  await openRoom({ input, output, commands, ask, nowMs: Date.now, reportFailure });
  input.destroy();
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
    if (config.token === undefined) await openTerminal(log);
    else await openDiscord(config.token, config, log);
  } catch (error) {
    const errorId = logFailure(log, error, 'could not start');
    process.stderr.write(`The bot could not start; error ${errorId} in the log says why.\n`);
    process.exit(1);
  }
}

await main().catch((error: unknown) => {
  if (error instanceof Problem) refused(error);
  throw error;
});
