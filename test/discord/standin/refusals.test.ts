import {
  type ChatInputCommandInteraction,
  type Client,
  DiscordAPIError,
  Events,
  RESTJSONErrorCodes as Codes,
} from 'discord.js';
import { describe, expect, it } from 'vitest';
import { startStandIn } from './server.ts';
import { clientFor, withBot } from './with-bot.ts';
import { channelIds, userIds } from './world.ts';

const nothing = (): void => undefined;

function onSlash(
  client: Client,
  answer: (interaction: ChatInputCommandInteraction) => Promise<unknown>,
): void {
  client.on(Events.InteractionCreate, (interaction) => {
    if (interaction.isChatInputCommand()) answer(interaction).catch(nothing);
  });
}

const reply = (client: Client): void => onSlash(client, (interaction) => interaction.reply('ok'));

/** The code of the refusal a call ends in. */
async function codeOf(call: Promise<unknown>): Promise<unknown> {
  const error: unknown = await call.then(
    () => undefined,
    (reason: unknown) => reason,
  );
  return error instanceof DiscordAPIError ? error.code : error;
}

describe('answers that come wrongly', () => {
  it('refuses the second answer to an interaction delivered twice', () =>
    withBot(reply, async (standIn) => {
      const handle = standIn.slash('dose', {}, { twice: true });
      expect(await handle.callback(0)).toMatchObject({ status: 200, code: 0 });
      expect(await handle.callback(1)).toMatchObject({ status: 400, code: 40060 });
      expect((await handle.reply).content).toBe('ok');
    }));

  it('refuses an answer to an interaction that is over', () =>
    withBot(reply, async (standIn) => {
      const handle = standIn.slash('dose', {}, { late: true });
      expect(await handle.callback()).toMatchObject({ status: 404, code: Codes.UnknownInteraction });
    }));

  it.each([
    [3000, 0],
    [3001, Codes.UnknownInteraction],
  ])('after %i ms answers with code %i', async (elapsedMs, code) => {
    let nowMs = Date.UTC(2025, 5, 1);
    const slow = (client: Client): void =>
      onSlash(client, (interaction) => {
        nowMs += elapsedMs;
        return interaction.reply('ok');
      });
    await withBot(
      slow,
      async (standIn) => {
        expect(await standIn.slash('dose').callback()).toMatchObject({ code, elapsedMs });
      },
      { nowMs: () => nowMs },
    );
  });

  it.each([
    [15 * 60_000, undefined],
    [15 * 60_000 + 1, Codes.InvalidWebhookToken],
  ])('after %i ms edits with code %s', async (elapsedMs, code) => {
    let nowMs = Date.UTC(2025, 5, 1);
    let edited: Promise<unknown> | undefined;
    const slow = (client: Client): void =>
      onSlash(client, async (interaction) => {
        await interaction.deferReply();
        nowMs += elapsedMs;
        edited = codeOf(interaction.editReply('ok'));
      });
    await withBot(
      slow,
      async (standIn) => {
        await standIn.slash('dose').acknowledged;
        await standIn.until(() => standIn.requests.find((each) => each.method === 'PATCH'), 'edit');
        expect(await edited).toBe(code);
      },
      { nowMs: () => nowMs },
    );
  });

  it('says what the bot did not do', () =>
    withBot(
      nothing,
      async (standIn) => {
        await expect(standIn.slash('dose').reply).rejects.toThrow('did not reply');
      },
      { waitMs: 50 },
    ));
});

describe('requests that are refused', () => {
  it('refuses a wrong token', async () => {
    const standIn = await startStandIn();
    const client = clientFor(standIn);
    try {
      await expect(client.login('wrong')).rejects.toThrow('invalid token');
      expect(standIn.requests.map((each) => [each.path, each.status])).toEqual([['/gateway/bot', 401]]);
      const answer = await fetch(`${standIn.apiBase}/v10/users/@me`);
      expect(await answer.json()).toEqual({ message: '401: Unauthorized', code: 0 });
    } finally {
      await client.destroy();
      await standIn.close();
    }
  });

  it('refuses what the bot may not do, and notes routes it does not know', () =>
    withBot(nothing, async (standIn, client) => {
      const { rest, users } = client;
      const post = (channelId: string): Promise<unknown> =>
        rest.post(`/channels/${channelId}/messages`, { body: { content: 'c' } });
      expect(await codeOf(post(channelIds.notices))).toBe(Codes.MissingPermissions);
      expect(await codeOf(post('1100000000000000999'))).toBe(Codes.UnknownChannel);
      expect(await codeOf(users.send(userIds.closed, 'c'))).toBe(Codes.CannotSendMessagesToThisUser);
      expect(await codeOf(rest.get('/guilds/1/bans'))).toBe(0);
      expect(standIn.unknownRoutes).toEqual(['GET /guilds/1/bans']);
    }));

  it('fails the next request as told: once and mended, or for good', () =>
    withBot(nothing, async (standIn, client) => {
      const path = `/channels/${channelIds.chat}/messages`;
      const post = (): Promise<unknown> =>
        client.rest.post(`/channels/${channelIds.chat}/messages`, { body: { content: 'c' } });
      for (const status of [429, 500]) standIn.failNext({ method: 'POST', path }, status);
      expect(await codeOf(post())).toBeUndefined();
      expect(standIn.requests.slice(-3).map((each) => each.status)).toEqual([429, 500, 200]);
      standIn.failNext({ path }, 403);
      expect(await codeOf(post())).toBe(Codes.MissingPermissions);
      standIn.failNext({ path: /messages$/ }, 404, { message: 'Unknown Channel', code: 10003 });
      expect(await codeOf(post())).toBe(Codes.UnknownChannel);
    }));

  it('holds the global limit of 50 a second when asked to', () =>
    withBot(
      nothing,
      async (standIn) => {
        const headers = { authorization: `Bot ${standIn.token}` };
        const used = standIn.requests.length;
        const get = (): Promise<Response> => fetch(`${standIn.apiBase}/v10/users/@me`, { headers });
        const all = await Promise.all(Array.from({ length: 51 - used }, get));
        expect(all.filter((each) => each.status === 429)).toHaveLength(1);
        const refused = all.find((each) => each.status === 429);
        expect(refused?.headers.get('x-ratelimit-global')).toBe('true');
        expect(await refused?.json()).toMatchObject({ retry_after: 1, global: true });
        expect(standIn.rateBreaches).toHaveLength(1);
      },
      { enforceGlobalLimit: true, nowMs: () => Date.UTC(2025, 5, 1) },
    ));
});
