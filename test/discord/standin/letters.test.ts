import { type Client, DiscordAPIError, PermissionFlagsBits, Routes } from 'discord.js';
import { describe, expect, it } from 'vitest';
import { withBot } from './with-bot.ts';
import { channelIds, denying, guildId, userIds } from './world.ts';

const nothing = (_client: Client): void => undefined;
const chat = Routes.channelMessages(channelIds.chat);
const numbers = Routes.channelMessages(channelIds.numbers);

/** The code of the refusal a call ends in. */
async function codeOf(call: Promise<unknown>): Promise<unknown> {
  const error: unknown = await call.then(
    () => undefined,
    (reason: unknown) => reason,
  );
  return error instanceof DiscordAPIError ? error.code : error;
}

async function contents(client: Client, route: typeof chat, limit = 50): Promise<readonly string[]> {
  const found = await client.rest.get(route, { query: new URLSearchParams({ limit: String(limit) }) });
  return (found as readonly { content: string }[]).map(({ content }) => content);
}

describe('the messages of a channel', () => {
  it('come newest first, as many as asked for, of this channel alone', () =>
    withBot(nothing, async (_standIn, client) => {
      for (const content of ['one', 'two', 'three']) await client.rest.post(chat, { body: { content } });
      await client.rest.post(numbers, { body: { content: 'elsewhere' } });
      expect(await contents(client, chat)).toEqual(['three', 'two', 'one']);
      expect(await contents(client, chat, 2)).toEqual(['three', 'two']);
    }));

  it('are none where the bot may not read the history, and refused where it may not see the channel', () =>
    withBot(nothing, async ({ world }, client) => {
      await client.rest.post(chat, { body: { content: 'one' } });
      const { chat: id } = channelIds;
      const channel = world.channels.get(id);
      const taking = (right: bigint) =>
        world.channels.set(id, { ...channel, permission_overwrites: [denying(right)] });
      taking(PermissionFlagsBits.ReadMessageHistory);
      expect(await contents(client, chat)).toEqual([]);
      taking(PermissionFlagsBits.ViewChannel);
      expect(await codeOf(contents(client, chat))).toBe(50001);
    }));
});

describe('a nonce that is enforced', () => {
  it('holds for all channels, for the same author', () =>
    withBot(nothing, async (standIn, client) => {
      const body = { content: 'due', nonce: 'r1-1', enforce_nonce: true };
      const first = await client.rest.post(chat, { body });
      const second = await client.rest.post(numbers, { body });
      expect((second as { id: string }).id).toBe((first as { id: string }).id);
      expect(standIn.sent).toHaveLength(1);
    }));
});

describe('an answer that is lost', () => {
  it('leaves the message there', () =>
    withBot(nothing, async (standIn, client) => {
      client.rest.options.retries = 0;
      standIn.loseNext({ method: 'POST', path: chat });
      await expect(client.rest.post(chat, { body: { content: 'one' } })).rejects.toThrow(
        /reset|closed|socket/i,
      );
      expect(await contents(client, chat)).toEqual(['one']);
    }));
});

describe('who is in the guild', () => {
  it('is told, and nobody who left is written to', () =>
    withBot(nothing, async ({ world }, client) => {
      const keeper = await client.users.fetch(userIds.keeper);
      const member = () => client.rest.get(Routes.guildMember(guildId, userIds.keeper));
      await keeper.send('one');
      expect(await member()).toMatchObject({ user: { id: userIds.keeper } });
      world.left.add(userIds.keeper);
      expect(await codeOf(member())).toBe(10007);
      expect(await codeOf(keeper.send('two'))).toBe(50278);
      world.left.clear();
      world.closed.add(userIds.keeper);
      expect(await codeOf(keeper.send('three'))).toBe(50007);
    }));

  it('is closed to a bot that was removed', () =>
    withBot(nothing, async ({ world }, client) => {
      world.left.add(userIds.bot);
      expect(await codeOf(client.rest.get(Routes.guildMember(guildId, userIds.keeper)))).toBe(10004);
      expect(await codeOf(client.rest.post(chat, { body: { content: 'one' } }))).toBe(50001);
    }));
});
