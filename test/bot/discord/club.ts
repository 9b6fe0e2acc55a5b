import { lazyReader } from '../../../bot/reader/load.ts';
import { REST } from 'discord.js';
import { createBot } from '../../../bot/discord/client.ts';
import type { Bot } from '../../../bot/discord/client.ts';
import { menus } from '../../../bot/discord/menu/menus.ts';
import { definitions, menuDefinitions } from '../../../bot/discord/register/definition.ts';
import type { Desk } from '../../../bot/discord/outcome.ts';
import { register } from '../../../bot/discord/register/registration.ts';
import { restOptions } from '../../../bot/discord/rest.ts';
import { openLog } from '../../../bot/log.ts';
import { openTalks } from '../../../bot/talks.ts';
import { openStore } from '../../../bot/store/open.ts';
import type { Store } from '../../../bot/store/open.ts';
import type { Problem } from '../../../core/problem.ts';
import { startStandIn } from '../../discord/standin/server.ts';
import type { StandIn } from '../../discord/standin/server.ts';
import { demoAsk, demoCommands } from './demo.ts';

export const nowMs = 1_700_000_000_000;

export interface Club {
  readonly standIn: StandIn;
  /** The first bot. */
  readonly bot: Bot;
  /** What members keep, in memory. */
  readonly store: Store;
  /** The lines of the log. */
  readonly log: readonly string[];
  readonly refusals: readonly Problem[];
  /** Stops the bot and starts a new one over the same store. */
  readonly restart: () => Promise<void>;
  readonly close: () => Promise<void>;
}

interface How extends Partial<
  Pick<Desk, 'commands' | 'ask' | 'reader' | 'toPng' | 'turnOf' | 'talkOf' | 'nowMs' | 'newHeldId'>
> {
  readonly token?: string;
  readonly start?: boolean;
}

/** The bot, logged in to a stand-in with its commands registered. */
export async function openClub(how: How = {}): Promise<Club> {
  const {
    commands = demoCommands,
    ask = demoAsk,
    toPng = onePixel,
    token: given,
    start = true,
    ...more
  } = how;
  const store = openStore({ file: ':memory:', nowMs: more.nowMs ?? now });
  const standIn = await startStandIn();
  const { apiBase, token } = standIn;
  const wanted = [...definitions(commands), ...menuDefinitions(menus)];
  await register(new REST(restOptions(apiBase)).setToken(token), wanted, 'global', false);
  const log: string[] = [];
  const refusals: Problem[] = [];
  const create = (): Bot =>
    createBot({
      ...deskOf(store, { commands, ask, toPng, ...more }),
      servers: store,
      log: openLog('debug', { write: (line) => void log.push(line) }),
      apiBase,
      token: given ?? token,
      onRefused: (problem) => void refusals.push(problem),
    });
  let bot = create();
  const first = bot;
  if (start) await bot.start();
  const restart = async (): Promise<void> => {
    await bot.stop();
    bot = create();
    await bot.start();
  };
  const close = async (): Promise<void> => {
    await bot.stop();
    store.close();
    await closeClean(standIn);
  };
  return { standIn, bot: first, store, log, refusals, restart, close };
}

const now = (): number => nowMs;

/** The n-th is "h<n>", in one count for all desks of a test: none comes twice over one store. */
export function countedIds(): () => string {
  return () => `h${(heldCount += 1)}`;
}

let heldCount = 0;

/** The desk of a bot over a store; its log is silent. */
export function deskOf(store: Store, how: Pick<Desk, 'commands' | 'ask'> & Partial<Desk>): Desk {
  const { keepFor, settingsOf, changeSettings } = store;
  const kept = { keepFor, settingsOf, changeSettings, held: store.held, newHeldId: countedIds() };
  const alone = { turnOf: () => 'now' as const, ...openTalks(how.nowMs ?? now, store.lastingCases) };
  return {
    reader: lazyReader,
    log: openLog('silent'),
    nowMs: now,
    toPng: onePixel,
    ...alone,
    ...kept,
    ...how,
  };
}

const pixel = 'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAQAAAC1HAwCAAAAC0lEQVR42mNkYAAAAAYAAjCB0C8AAAAASUVORK5CYII=';

/** Any picture as one point, where a test is not about drawing. */
export async function onePixel(): Promise<Uint8Array> {
  return Buffer.from(pixel, 'base64');
}

/** Closes the stand-in; throws if the bot broke a limit of Discord or asked for what there is not. */
export async function closeClean(standIn: StandIn): Promise<void> {
  await standIn.close();
  const faults = [...standIn.violations, ...standIn.unknownRoutes];
  if (faults.length > 0) throw new Error(JSON.stringify(faults));
}
