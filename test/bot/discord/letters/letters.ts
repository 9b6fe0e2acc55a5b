import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import type { Bot } from '../../../../bot/discord/client.ts';
import { createBot } from '../../../../bot/discord/client.ts';
import { reminderLoop } from '../../../../bot/discord/letters/reminders.ts';
import { openLog } from '../../../../bot/log.ts';
import { openStore, type Store } from '../../../../bot/store/open.ts';
import type { Command } from '../../../../commands/command.ts';
import type { Plan, Reminder } from '../../../../commands/reminder.ts';
import { instantOf } from '../../../../core/schedule/zone.ts';
import { startStandIn, type StandIn } from '../../../discord/standin/server.ts';
import { FakeClock } from '../../clock/fake-clock.ts';
import { closeClean, deskOf } from '../club.ts';
import { demoAsk, demoCommands } from '../demo.ts';

export const minuteMs = 60_000;
/** What a reminder of these tests is about. */
export const task = 'change filter floss';

/** The bot with its reminders on a stand-in; the clock of all three is moved by the test. */
export interface LetterRoom {
  readonly standIn: StandIn;
  readonly clock: FakeClock;
  /** The store there is now. */
  readonly store: () => Store;
  readonly log: readonly string[];
  /** Adds a reminder that is due once, a minute from now. */
  readonly remind: (ownerId: string, plan?: Partial<Plan>) => Reminder;
  /** The process ends at once: nothing more reaches the store. */
  readonly crash: () => void;
  /** Starts a bot over the same file. */
  readonly begin: () => Promise<Bot>;
  readonly close: () => Promise<void>;
}

export async function openLetterRoom(commands: readonly Command[] = demoCommands): Promise<LetterRoom> {
  const folder = mkdtempSync(join(tmpdir(), 'letters-'));
  const file = join(folder, 'sumpside.sqlite');
  const clock = new FakeClock(instantOf('2026-01-05 08:59', 'UTC'), untilIdle);
  const standIn = await startStandIn({ nowMs: clock.nowMs });
  const log: string[] = [];
  const bots: Bot[] = [];
  let store = openStore({ file, nowMs: clock.nowMs });
  let isOpen = true;
  return {
    standIn,
    clock,
    store: () => store,
    log,
    remind: (ownerId, plan = {}) => {
      const anchor = '2026-01-05 09:00';
      const usual = { text: task, parameters: [], anchor, zone: 'UTC', rule: { every: 'once' } } as const;
      const whole: Plan = { ...usual, place: { kind: 'direct' }, ...plan };
      const nextMs = instantOf(whole.anchor, 'UTC');
      return store.keepFor(ownerId).addReminder(whole, { nextMs });
    },
    crash: () => {
      store.close();
      isOpen = false;
    },
    begin: async () => {
      if (!isOpen) store = openStore({ file, nowMs: clock.nowMs });
      isOpen = true;
      const { apiBase, token } = standIn;
      const logger = openLog('debug', { write: (line) => void log.push(line) });
      const { due } = store;
      const desk = deskOf(store, { commands, ask: demoAsk, log: logger, nowMs: clock.nowMs });
      const loop = reminderLoop({ ...desk, token, apiBase, due }, clock);
      const bot = createBot({ ...desk, token, apiBase, loop, onRefused: () => undefined });
      bots.push(bot);
      await bot.start();
      return bot;
    },
    close: async () => {
      await Promise.all(bots.map((bot) => bot.stop()));
      if (isOpen) store.close();
      rmSync(folder, { recursive: true });
      await closeClean(standIn);
    },
  };
}

/** Waits until the loop has nothing under way: then it has a timer for its next tick. */
async function untilIdle(clock: FakeClock): Promise<void> {
  for (let tries = 0; clock.timers === 0; tries++) {
    if (tries > 5000) throw new Error('the loop does not come to rest');
    await wait(2);
  }
}
