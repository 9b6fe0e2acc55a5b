import { PermissionFlagsBits } from 'discord.js';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Json } from '../../../discord/standin/json.ts';
import { channelIds, denying, guildId, userIds } from '../../../discord/standin/world.ts';
import { openClub } from '../club.ts';
import type { Club } from '../club.ts';
import { formCommands } from './form-commands.ts';
import { probeCommands } from '../probe-commands.ts';

const { chat, numbers, notices } = channelIds;
const { keeper, steward } = userIds;
const threadId = '1100000000000000251';
const forumId = '1100000000000000252';
const guilds = 1;

let club: Club;

beforeEach(async () => {
  club = await openClub({ commands: [...probeCommands, ...formCommands] });
});

afterEach(() => club.close());

async function where(channel: string, how: { userId?: string; channelId?: string } = {}): Promise<string> {
  return (await club.standIn.slash('where', { channel: { channel } }, how).reply).text;
}

/** Changes the world and tells the bot. */
function tell(event: string, data: Json): void {
  club.standIn.gateway.dispatch(event, guilds, () => ({ guild_id: guildId, ...data }));
}

function put(channel: Json, event: string): void {
  club.standIn.world.channels.set(String(channel['id']), channel);
  tell(event, channel);
}

const thread = (type: number, parentId: string): Json => ({
  id: threadId,
  type,
  guild_id: guildId,
  parent_id: parentId,
  name: 'tank talk',
  owner_id: keeper,
  message_count: 0,
  member_count: 1,
  rate_limit_per_user: 0,
  thread_metadata: {
    archived: false,
    locked: false,
    auto_archive_duration: 1440,
    archive_timestamp: '2024-03-01T12:00:00.000000+00:00',
  },
});

describe('what an asker may write, and what the bot lacks', () => {
  it('in another channel follows its overwrites', async () => {
    expect(await where(numbers)).toMatch(/write true[^]*lacks nothing/);
    expect(await where(notices)).toMatch(/write false[^]*lacks Send Messages$/);
  });

  it('in the channel of the command follows what Discord sends along', async () => {
    expect(await where(chat)).toMatch(/write true[^]*here: true[^]*lacks nothing$/);
  });

  it('follows a change of roles and of overwrites at once', async () => {
    const rights = String(PermissionFlagsBits.ViewChannel);
    const fixed = {
      name: '@everyone',
      position: 0,
      color: 0,
      hoist: false,
      managed: false,
      mentionable: false,
    };
    tell('GUILD_ROLE_UPDATE', { role: { id: guildId, permissions: rights, flags: 0, ...fixed } });
    await vi.waitFor(async () =>
      expect(await where(numbers)).toMatch(/write false[^]*lacks Send Messages, Read Message History/),
    );
    const opened = { id: guildId, type: 0, allow: String(PermissionFlagsBits.SendMessages), deny: '0' };
    const before = club.standIn.world.channels.get(numbers) ?? {};
    put({ ...before, permission_overwrites: [opened] }, 'CHANNEL_UPDATE');
    await vi.waitFor(async () =>
      expect(await where(numbers)).toMatch(/write true[^]*lacks Read Message History/),
    );
  });

  it('in a channel they may not see is nothing, whatever else is allowed', async () => {
    const before = club.standIn.world.channels.get(numbers) ?? {};
    put({ ...before, permission_overwrites: [denying(PermissionFlagsBits.ViewChannel)] }, 'CHANNEL_UPDATE');
    await vi.waitFor(async () => expect(await where(numbers)).toMatch(/write false[^]*lacks View Channel$/));
  });

  it('in a thread or post is a permission of its own, from the channel it is in', async () => {
    put(thread(11, numbers), 'THREAD_CREATE');
    await vi.waitFor(async () =>
      expect(await where(threadId)).toMatch(/write false[^]*lacks Send Messages in Threads$/),
    );
    const allow = String(PermissionFlagsBits.SendMessagesInThreads);
    const deny = String(PermissionFlagsBits.SendMessages);
    const before = club.standIn.world.channels.get(numbers) ?? {};
    const inThreads = { id: guildId, type: 0, allow, deny };
    put({ ...before, permission_overwrites: [inThreads] }, 'CHANNEL_UPDATE');
    await vi.waitFor(async () => expect(await where(threadId)).toMatch(/write true[^]*lacks nothing/));
    expect(await where(numbers)).toContain('write false');
  });

  it('is not theirs in a private thread they may not be in, nor in a forum itself', async () => {
    put(thread(12, numbers), 'THREAD_CREATE');
    const forum = { ...club.standIn.world.channels.get(numbers), id: forumId, type: 15, available_tags: [] };
    put(forum, 'CHANNEL_CREATE');
    await vi.waitFor(async () => expect(await where(forumId)).toMatch(/lacks Send Messages in Threads$/));
    expect(await where(forumId)).toContain('write false');
    expect(await where(threadId, { userId: steward })).toContain('write false');
  });

  it('in a channel that is gone, or of another server, is nothing', async () => {
    const held = async (channel: string): Promise<string> => {
      const customId = `run:where?channel=${channel}`;
      await club.standIn.slash('hold', { with: customId }).reply;
      return (await club.standIn.component(customId).reply).text;
    };
    expect(await held(numbers)).toMatch(/write true[^]*lacks nothing/);
    tell('CHANNEL_DELETE', { ...club.standIn.world.channels.get(numbers) });
    const all = /write false[^]*lacks View Channel, Send Messages, Read Message History$/;
    await vi.waitFor(async () => expect(await held(numbers)).toMatch(all));
    expect(await held('1100000000000000999')).toMatch(all);
  });

  it('belongs to the owner and to whoever manages the server', async () => {
    expect(await where(notices, { userId: steward })).toMatch(/write true, manage true/);
    expect(await where(notices)).toContain('manage false');
  });
});

describe('in direct messages', () => {
  it('there is no server', async () => {
    const asked = club.standIn.slash('where', { channel: { channel: chat } }, { dm: true });
    expect((await asked.reply).text).toContain('write undefined');
  });
});
