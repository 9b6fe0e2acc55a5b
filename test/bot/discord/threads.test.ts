import { PermissionFlagsBits } from 'discord.js';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { ask } from '../../ask.ts';
import { commands } from '../../../commands/index.ts';
import { channelIds, guildId, userIds } from '../../discord/standin/world.ts';
import { forumId, openForum, openThread, put, threadId } from './a-thread.ts';
import { openClub } from './club.ts';
import type { Club } from './club.ts';

const { chat, numbers } = channelIds;
const dose = 'raise alk 7.2 to 8.4 in 75 gal with soda ash';
const soda = /10\.2 g of sodium bicarbonate/;

let club: Club;
beforeEach(async () => {
  club = await openClub({ commands, ask });
});
afterEach(() => club.close());

const here = { channelId: threadId };

describe.each([
  ['a thread', () => openThread(club, numbers)],
  ['a post of a forum', () => (openForum(club), openThread(club, forumId))],
])('in %s', (_, open) => {
  beforeEach(() => open());

  it('a mention is answered there, as a reply, and the talk goes on there alone', async () => {
    const asked = club.standIn.mention(dose, here);
    const reply = await asked.reply;
    expect(reply.text).toContain('6.4 g of sodium carbonate');
    expect(reply.message['channel_id']).toBe(threadId);
    expect(reply.body['message_reference']).toMatchObject({ message_id: asked.id });
    expect(reply.pings).toEqual([]);
    const above = await club.standIn.mention('and with baking soda?', { channelId: numbers }).reply;
    expect(above.text).not.toMatch(soda);
    expect((await club.standIn.mention('and with baking soda?', here).reply).text).toMatch(soda);
  });

  it('a message that names nobody is not answered', async () => {
    club.standIn.channelMessage(dose, here);
    await club.standIn.mention('what is 8 dKH in meq/L', here).reply;
    expect(club.standIn.sent).toHaveLength(1);
  });

  it('a slash command is answered', async () => {
    const values = { of: 'alkalinity', now: '7.2', goal: '8.4', volume: '75 gal' };
    const how = { subcommand: 'amount', ...here };
    expect((await club.standIn.slash('dose', { ...values, with: 'soda ash' }, how).reply).text).toContain(
      '6.4 g',
    );
  });

  it('what the menu works out can be posted there', async () => {
    const asked = club.standIn.channelMessage(dose, here);
    const rights = String(PermissionFlagsBits.SendMessagesInThreads);
    for (const id of [numbers, forumId]) {
      const parent = club.standIn.world.channels.get(id);
      if (parent === undefined) continue;
      const allowed = { id: guildId, type: 0, allow: rights, deny: '0' };
      put(club, { ...parent, permission_overwrites: [allowed] }, 'CHANNEL_UPDATE');
    }
    const how = { userId: userIds.second, ...here };
    const told = await club.standIn.contextMenu('Work out the numbers', { message: asked.id }, how).reply;
    const id = /"custom_id":"(post:\d+)"/.exec(JSON.stringify(told.components))?.[1] ?? 'there is no button';
    const pressed = await club.standIn.component(id, { ...how, messageId: String(told.message['id']) }).reply;
    expect(pressed.text).toContain('Posted as a reply');
    const [posted] = club.standIn.sent;
    expect(posted?.message['channel_id']).toBe(threadId);
    expect(posted?.pings).toEqual([userIds.keeper]);
  });

  it('answers are public where those of the channel or forum it is in are', async () => {
    const steward = { userId: userIds.steward, subcommand: 'public' };
    const parent = club.standIn.world.channels.get(threadId)?.['parent_id'];
    await club.standIn.slash('desk', { add: { channel: chat } }, steward).reply;
    const asked = async () => club.standIn.slash('convert', { amount: '8 dKH' }, here).reply;
    expect((await asked()).ephemeral).toBe(true);
    expect((await club.standIn.mention(dose, here).reply).text).toContain('for your eyes only');
    await club.standIn.slash('desk', { add: { channel: String(parent) } }, steward).reply;
    await vi.waitFor(async () => expect((await asked()).ephemeral).toBe(false));
    expect((await club.standIn.mention(dose, here).reply).text).toContain('6.4 g');
  });
});
