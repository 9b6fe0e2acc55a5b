import { statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { logFailure } from './log.ts';
import type { Logger } from './log.ts';

const everyMs = 20_000;
/** A file older than this means that the bot has not been well for three beats. */
const staleMs = 3 * everyMs;

/** The file that is written anew while the bot is connected. */
export function heartbeatFile(dataDir: string): string {
  return join(dataDir, 'heartbeat');
}

/** Writes the time into the file now and then while `isWell`, for as long as the process lives. */
export function beat(
  file: string,
  { isWell, nowMs, log }: { isWell: () => boolean; nowMs: () => number; log: Logger },
): { readonly stop: () => void } {
  const once = (): void => {
    try {
      if (isWell()) writeFileSync(file, `${new Date(nowMs()).toISOString()}\n`);
    } catch (error) {
      logFailure(log, error, 'the heartbeat was not written');
    }
  };
  once();
  const timer = setInterval(once, everyMs).unref();
  return { stop: () => clearInterval(timer) };
}

/** Whether the file was written lately. */
export function isBeating(file: string, nowMs: number): boolean {
  const written = statSync(file, { throwIfNoEntry: false })?.mtimeMs;
  return written !== undefined && nowMs - written <= staleMs;
}
