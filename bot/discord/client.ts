import { setTimeout as wait } from 'node:timers/promises';
import { Client, Events, GatewayIntentBits, Options, Partials, Status } from 'discord.js';
import type { Interaction, Message } from 'discord.js';
import type { Problem } from '../../core/problem.ts';
import type { Loop } from '../clock/loop.ts';
import { inLocale } from '../../core/wording/in-locale.ts';
import { logFailure } from '../log.ts';
import type { Servers } from '../store/servers.ts';
import { answerAutocomplete, answerButton, answerCommand, answerForm, answerMessage } from './answer.ts';
import { newIds } from './asked/once.ts';
import { newPresses } from './asked/presses.ts';
import { withBrief } from './held/brief.ts';
import { openLocales } from './locales.ts';
import { answerMenu } from './menu/answer-menu.ts';
import { openDrafts } from './menu/drafts.ts';
import type { Drafts } from './menu/drafts.ts';
import { answerPost, isPostId } from './menu/post.ts';
import type { Desk } from './outcome.ts';
import { acknowledge } from './send.ts';
import { gatewayRefusal, tokenRefusal } from './refusal.ts';
import { restOptions } from './rest.ts';

export interface BotParts extends Desk {
  readonly token: string;
  readonly apiBase: string;
  /** Discord will not have this bot as it is; it will not try again by itself. */
  readonly onRefused: (problem: Problem) => void;
  /** Hears which servers the bot is put into and taken out of. */
  readonly servers?: Pick<Servers, 'serverLeft' | 'serverJoined' | 'onlyServers'>;
  /** Sends reminders from the first login until the bot stops. */
  readonly loop?: Loop;
}

export interface Bot {
  /** Resolves once logged in. A refusal goes to `onRefused`; throws when Discord cannot be reached. */
  readonly start: () => Promise<void>;
  /** Whether it hears what happens on Discord now. */
  readonly isConnected: () => boolean;
  /** Finishes the answers under way and leaves, within about 8 seconds. */
  readonly stop: () => Promise<void>;
}

const drainMs = 5000;
const closeMs = 3000;

/** The bot on Discord, not yet started. */
export function createBot(parts: BotParts): Bot {
  const { log } = parts;
  const client = createClient(parts.apiBase);
  const underWay = new Set<Promise<void>>();
  const track = (work: () => Promise<void> | undefined): void => {
    const tracked = Promise.resolve()
      .then(work)
      .catch((error: unknown) => void logFailure(log, error, 'an event was not handled'))
      .finally(() => underWay.delete(tracked));
    underWay.add(tracked);
  };
  client.on(Events.ClientReady, ({ user, guilds }) => {
    log.info({ user: user.id, servers: guilds.cache.size }, 'ready');
    parts.loop?.start();
  });
  const isNew = newIds();
  const isNewPress = newPresses(parts.nowMs);
  const drafts = openDrafts(parts.nowMs);
  const locales = openLocales(parts.nowMs);
  const desk = { ...parts, held: withBrief(parts.held, drafts.held) };
  client.on(Events.InteractionCreate, (interaction) => {
    if (!isNew(interaction.id)) return;
    const isAgain = interaction.isButton() && !isNewPress(interaction);
    const respond = (): Promise<void> | undefined =>
      isAgain ? acknowledge(log, interaction) : onInteraction(desk, drafts, interaction);
    track(() => inLocale(locales.ofInteraction(interaction), respond));
  });
  client.on(Events.MessageCreate, (message) =>
    track(() => inLocale(locales.ofMessage(message), () => onMessage(parts, message))),
  );
  if (parts.servers !== undefined) followServers(client, parts.servers, parts.nowMs);
  client.on(Events.Error, (error) => log.error({ err: error }, 'client error'));
  client.on(Events.ShardError, (error, shard) => log.warn({ shard, err: error }, 'gateway error'));
  client.on(Events.ShardReconnecting, (shard) => log.info({ shard }, 'gateway reconnecting'));
  client.on(Events.ShardResume, (shard) => log.info({ shard }, 'gateway resumed'));
  let refused = false;
  let stopping = false;
  const refuse = (problem: Problem | undefined): void => {
    if (problem === undefined || refused) return;
    refused = true;
    parts.onRefused(problem);
  };
  client.on(Events.ShardDisconnect, ({ code }) => refuse(gatewayRefusal(code)));
  return {
    start: async () => {
      await client.login(parts.token).catch((error: unknown) => {
        refuse(tokenRefusal(error));
        if (!refused && !stopping) throw error;
      });
    },
    isConnected: () => {
      const { shards } = client.ws;
      return !stopping && shards.size > 0 && shards.every(({ status }) => status === Status.Ready);
    },
    stop: async () => {
      stopping = true;
      client.removeAllListeners(Events.InteractionCreate).removeAllListeners(Events.MessageCreate);
      const last = [...underWay, parts.loop?.stop()];
      await Promise.race([Promise.allSettled(last), wait(drainMs, undefined, { ref: false })]);
      await Promise.race([client.destroy(), wait(closeMs, undefined, { ref: false })]);
    },
  };
}

function createClient(apiBase: string): Client {
  return new Client({
    intents: [GatewayIntentBits.Guilds, GatewayIntentBits.GuildMessages, GatewayIntentBits.DirectMessages],
    partials: [Partials.Channel],
    allowedMentions: { parse: [], repliedUser: false },
    makeCache: Options.cacheWithLimits({ ...Options.DefaultMakeCacheSettings, MessageManager: 0 }),
    rest: restOptions(apiBase),
  });
}

/** Which servers the bot is in; it may have been put out of one while it was not connected. */
function followServers(client: Client, servers: NonNullable<BotParts['servers']>, nowMs: () => number): void {
  client.on(Events.GuildCreate, ({ id }) => servers.serverJoined(id));
  client.on(Events.GuildDelete, ({ id }) => servers.serverLeft(id, nowMs()));
  client.on(Events.ClientReady, ({ guilds }) => servers.onlyServers([...guilds.cache.keys()], nowMs()));
}

function onInteraction(desk: Desk, drafts: Drafts, interaction: Interaction): Promise<void> | undefined {
  if (interaction.isChatInputCommand()) return answerCommand(desk, interaction);
  if (interaction.isAutocomplete()) return answerAutocomplete(desk, interaction);
  if (interaction.isMessageContextMenuCommand()) return answerMenu(desk, drafts, interaction);
  if (interaction.isButton() && isPostId(interaction.customId)) return answerPost(desk, drafts, interaction);
  if (interaction.isButton()) return answerButton(desk, interaction);
  if (interaction.isModalSubmit()) return answerForm(desk, interaction);
  return undefined;
}

/** Speaks only when spoken to: a direct message, or a message that mentions the bot itself or pings it by a reply. */
function onMessage(desk: Desk, message: Message): Promise<void> | undefined {
  const me = message.client.user.id;
  if (message.author.bot || message.webhookId !== null || message.system) return undefined;
  if (message.inGuild() && !message.mentions.users.has(me)) return undefined;
  const text = message.content.replaceAll(new RegExp(`<@!?${me}>`, 'g'), ' ').trim();
  return answerMessage(desk, message, text);
}
