import { PermissionFlagsBits } from 'discord.js';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { ask } from '../../../ask.ts';
import type { Json } from '../../../discord/standin/json.ts';
import type { MessageHandle } from '../../../discord/standin/message-drivers.ts';
import type { Sent } from '../../../discord/standin/message.ts';
import { channelIds, guildId, userIds } from '../../../discord/standin/world.ts';
import { nowMs, openClub } from '../club.ts';
import type { Club } from '../club.ts';
import { memberCommands } from '../members.ts';

const { chat, numbers } = channelIds;
const { keeper, second, steward, bot } = userIds;
const question = 'raise alk 7.2 to 8.4 with soda ash in 75 gal';

let club: Club;
let clockMs = nowMs;

beforeEach(async () => {
  clockMs = nowMs;
  club = await openClub({ commands: memberCommands, ask, nowMs: () => clockMs });
});

afterEach(() => club.close());

/** The keeper's question, and what the second member is answered about it. */
async function chosen(how: { channelId?: string } = {}): Promise<{ asked: MessageHandle; reply: Sent }> {
  const asked = club.standIn.channelMessage(question, how);
  const used = club.standIn.contextMenu('Work out the numbers', { message: asked.id }, { userId: second });
  return { asked, reply: await used.reply };
}

const postIn = ({ components }: Sent): string | undefined =>
  /"custom_id":"(post:\d+)"/.exec(JSON.stringify(components))?.[1];

async function press(reply: Sent, userId: string = second): Promise<Sent> {
  const id = postIn(reply) ?? expect.unreachable('there is no button');
  return club.standIn.component(id, { userId, messageId: String(reply.message['id']) }).reply;
}

const sentTo = (channelId: string): readonly Sent[] =>
  club.standIn.sent.filter(({ message }) => message['channel_id'] === channelId);

describe('the button that posts', () => {
  it('replies to the message, and pings its writer alone', async () => {
    const { asked, reply } = await chosen();
    expect(club.standIn.sent).toEqual([]);
    const told = await press(reply);
    expect(told.ephemeral).toBe(true);
    expect(told.text).toContain('Posted as a reply');
    const [posted, ...more] = sentTo(chat);
    expect(more).toEqual([]);
    expect(posted?.text).toContain('6.4 g of sodium carbonate');
    expect(posted?.ephemeral).toBe(false);
    expect(posted?.body['message_reference']).toMatchObject({ message_id: asked.id });
    expect(posted?.allowedMentions).toEqual({ parse: [], replied_user: true });
    expect(posted?.pings).toEqual([keeper]);
    expect(posted?.text).toContain(`posted by: a helper <@${second}>`);
    expect(posted?.text).not.toContain('with no tank of anyone');
    expect(posted && postIn(posted)).toBeUndefined();
  });

  it('works once', async () => {
    const { reply } = await chosen();
    await press(reply);
    clockMs += 3000;
    expect((await press(reply)).text).toContain('no longer here to be posted');
    expect(sentTo(chat)).toHaveLength(1);
  });

  it('works for the helper alone, and for them still after another tried', async () => {
    const { reply } = await chosen();
    expect((await press(reply, steward)).text).toContain('no longer here to be posted');
    expect((await press(reply, keeper)).ephemeral).toBe(true);
    expect(sentTo(chat)).toEqual([]);
    expect((await press(reply)).text).toContain('Posted as a reply');
  });

  it('works for 15 minutes', async () => {
    const [inTime, late] = [await chosen(), await chosen()];
    clockMs = nowMs + 15 * 60_000;
    expect((await press(inTime.reply)).text).toContain('Posted as a reply');
    clockMs += 1;
    const told = await press(late.reply);
    expect(told.text).toContain('15 minutes');
    expect(sentTo(chat)).toHaveLength(1);
  });

  it('is kindly out of work after a restart', async () => {
    const { reply } = await chosen();
    await club.restart();
    expect((await press(reply)).text).toContain('no longer here to be posted');
    expect(sentTo(chat)).toEqual([]);
  });

  it('posts nothing once the message is gone', async () => {
    const { asked, reply } = await chosen();
    asked.message.deleted = true;
    expect((await press(reply)).text).toContain('that message is no longer there');
    expect(sentTo(chat)).toEqual([]);
  });

  it('says so when Discord does not take it', async () => {
    const { reply } = await chosen();
    club.standIn.failNext({ method: 'POST', path: '/channels/' }, 403, { code: 50013, message: 'Missing' });
    expect((await press(reply)).text).toContain('Not posted: Discord did not take it.');
    expect(sentTo(chat)).toEqual([]);
    expect(club.log.join('')).toContain('an answer was not delivered');
  });

  it('holds the choices for whoever presses them', async () => {
    const { id } = club.standIn.channelMessage('raise alk 3.2 to 3.6 in 75 gal with soda ash');
    const used = club.standIn.contextMenu('Work out the numbers', { message: id }, { userId: second });
    await press(await used.reply);
    const [posted] = sentTo(chat);
    const choice = /"custom_id":"(run:[^"]*meq[^"]*)"/.exec(JSON.stringify(posted?.components))?.[1];
    expect(choice).toBeDefined();
    expect((await club.standIn.component(choice ?? '').reply).text).toMatch(/meq\/L/);
  });
});

/** Takes or gives rights in a channel of the world. */
function overwrite(
  channelId: string,
  id: string,
  type: number,
  rights: { deny?: bigint; allow?: bigint },
): void {
  const { deny = 0n, allow = 0n } = rights;
  const channel = club.standIn.world.channels.get(channelId) ?? {};
  const entry = { id, type, deny: String(deny), allow: String(allow) };
  const list = [...((channel['permission_overwrites'] as readonly Json[] | undefined) ?? []), entry];
  club.standIn.world.channels.set(channelId, { ...channel, permission_overwrites: list });
}

const { SendMessages, SendMessagesInThreads, ReadMessageHistory } = PermissionFlagsBits;
const openIn = (...ids: string[]): void =>
  club.store.changeSettings(guildId, { ...club.store.settingsOf(guildId), publicChannelIds: ids });

describe('no button, and one line that says why,', () => {
  it.each([
    ['/desk allows no public answers', () => openIn(numbers), 'in this channel I answer for your eyes only'],
    [
      'the bot may not write',
      () => overwrite(chat, bot, 1, { deny: SendMessages | ReadMessageHistory }),
      'I lack Send Messages, Read Message History in this channel',
    ],
    [
      'the helper may not write',
      () => overwrite(chat, second, 1, { deny: SendMessages }),
      'you may not write in this channel',
    ],
  ])('where %s', async (_, change, why) => {
    change();
    const { reply } = await chosen();
    expect(reply.text).toContain('6.4 g');
    expect(postIn(reply)).toBeUndefined();
    expect(reply.text).toContain(`can not be posted: ${why}`);
  });

  it('nor does a button of before work there', async () => {
    const { reply } = await chosen();
    openIn(numbers);
    expect((await press(reply)).text).toContain('Not posted: in this channel I answer for your eyes only');
    expect(sentTo(chat)).toEqual([]);
    openIn();
    clockMs += 3000;
    expect((await press(reply)).text).toContain('Posted as a reply');
  });
});

const put = (channel: Json, event: string): void => {
  club.standIn.world.channels.set(String(channel['id']), channel);
  club.standIn.gateway.dispatch(event, 1, () => channel);
};

describe('in a thread or a forum post', () => {
  const forumId = '1100000000000000272';
  const threadId = '1100000000000000271';
  const thread = (parentId: string): Json => ({
    id: threadId,
    type: 11,
    guild_id: guildId,
    parent_id: parentId,
    name: 'pale zoas',
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
  const forum = {
    id: forumId,
    type: 15,
    guild_id: guildId,
    parent_id: null,
    name: 'help',
    position: 9,
    available_tags: [],
  };

  it.each([
    ['thread', numbers],
    ['forum post', forumId],
  ])('the answer goes there too: %s', async (_, parentId) => {
    put({ ...forum, permission_overwrites: [] }, 'CHANNEL_CREATE');
    overwrite(parentId, guildId, 0, { allow: SendMessagesInThreads });
    put(thread(parentId), 'THREAD_CREATE');
    await club.standIn.directMessage('are you there?').reply;
    const { asked, reply } = await chosen({ channelId: threadId });
    expect((await press(reply)).text).toContain('Posted as a reply');
    const [posted] = sentTo(threadId);
    expect(posted?.body['message_reference']).toMatchObject({ message_id: asked.id });
    expect(posted?.pings).toEqual([keeper]);
  });

  it('needs the right to write in threads', async () => {
    put(thread(numbers), 'THREAD_CREATE');
    await club.standIn.directMessage('are you there?').reply;
    const { reply } = await chosen({ channelId: threadId });
    expect(postIn(reply)).toBeUndefined();
    expect(reply.text).toContain('can not be posted');
  });
});
