import { existsSync, mkdtempSync, rmSync, utimesSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { beat, heartbeatFile, isBeating } from '../../bot/heartbeat.ts';
import { openLog } from '../../bot/log.ts';
import { closeClean, openClub } from './discord/club.ts';

let dir = '';
beforeEach(() => {
  dir = mkdtempSync(join(tmpdir(), 'sumpside-beat-'));
});
afterEach(() => rmSync(dir, { recursive: true }));

it('is written while the bot is well, and is stale after a minute', () => {
  const file = heartbeatFile(dir);
  let well = false;
  const parts = { isWell: () => well, nowMs: Date.now, log: openLog('silent') };
  beat(file, parts).stop();
  expect(isBeating(file, Date.now())).toBe(false);
  well = true;
  beat(file, parts).stop();
  expect(isBeating(file, Date.now())).toBe(true);
  expect(isBeating(file, Date.now() + 61_000)).toBe(false);
  utimesSync(file, 0, 0);
  expect(isBeating(file, Date.now())).toBe(false);
});

it('that cannot be written is logged and ends nothing', () => {
  const lines: string[] = [];
  const log = openLog('error', { write: (line) => void lines.push(line) });
  beat(join(dir, 'none', 'heartbeat'), { isWell: () => true, nowMs: Date.now, log }).stop();
  expect(lines.join('')).toContain('the heartbeat was not written');
});

it('goes by the connection to Discord', async () => {
  const { standIn, bot } = await openClub({ start: false });
  expect(bot.isConnected()).toBe(false);
  await bot.start();
  await vi.waitFor(() => expect(bot.isConnected()).toBe(true));
  const file = heartbeatFile(dir);
  beat(file, { isWell: bot.isConnected, nowMs: Date.now, log: openLog('silent') }).stop();
  expect(existsSync(file)).toBe(true);
  standIn.dropGateway(4000);
  await vi.waitFor(() => expect(bot.isConnected()).toBe(false), { interval: 1 });
  await vi.waitFor(() => expect(bot.isConnected()).toBe(true), { timeout: 5000 });
  await bot.stop();
  expect(bot.isConnected()).toBe(false);
  await closeClean(standIn);
});
