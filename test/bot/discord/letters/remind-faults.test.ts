import { PermissionFlagsBits } from 'discord.js';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { channelIds, denying, guildId, userIds } from '../../../discord/standin/world.ts';
import { minuteMs, openLetterRoom, task, type LetterRoom } from './letters.ts';

const { keeper, closed, bot: botId } = userIds;
const inChat = { place: { kind: 'channel', serverId: guildId, channelId: channelIds.chat } } as const;
const posting = { method: 'POST', path: /^\/channels\/\d+\/messages$/ } as const;
/** Longer than Discord remembers a nonce. */
const longMs = 30 * minuteMs;

let room: LetterRoom;

beforeEach(async () => {
  room = await openLetterRoom();
});

afterEach(() => room.close());

/** What the bot sent to channels, of the reminder alone. */
function letters(): readonly string[] {
  return room.standIn.sent.filter(({ text }) => text.includes(task)).map(({ text }) => text);
}

function notices(ownerId: string = keeper): readonly string[] {
  return room.store().keepFor(ownerId).takeNotices();
}

async function runs(ms = 2 * minuteMs): Promise<void> {
  await room.begin();
  await room.clock.pass(ms);
}

function take(...rights: readonly bigint[]): void {
  const { channels } = room.standIn.world;
  const channel = channels.get(channelIds.chat);
  channels.set(channelIds.chat, { ...channel, permission_overwrites: rights.map(denying) });
}

describe('a reminder that is due', () => {
  it('comes once in a direct message, with its buttons, and pings nobody else', async () => {
    const { id } = room.remind(keeper);
    await runs();
    expect(letters()).toHaveLength(1);
    const [sent] = room.standIn.sent;
    expect(JSON.stringify(sent?.components)).toContain(`run:remind done?reminder=${id}&due=1767603600`);
    expect(sent?.body).toMatchObject({ nonce: `r${id}-1767603600`, enforce_nonce: true });
    expect(sent?.pings).toEqual([]);
  });

  it('names and pings its owner in a channel', async () => {
    room.remind(keeper, inChat);
    await runs();
    const [sent] = room.standIn.sent;
    expect(sent?.text.startsWith(`<@${keeper}>\n`)).toBe(true);
    expect(sent?.pings).toEqual([keeper]);
    expect(sent?.allowedMentions).toMatchObject({ parse: [], users: [keeper] });
  });
});

describe('places that are closed', () => {
  it('direct messages: stops, and tells its owner at the next command', async () => {
    room.remind(closed, { rule: { every: 'days', count: 1 } });
    await runs(60 * minuteMs);
    expect(letters()).toEqual([]);
    expect(notices(closed)).toEqual([
      expect.stringMatching(/was not delivered: direct messages .* not taken/),
    ]);
    expect(room.standIn.requests.filter(({ path }) => posting.path.test(path))).toHaveLength(1);
  });

  it.each([
    [
      'a deleted channel',
      () => void room.standIn.world.channels.delete(channelIds.chat),
      'the channel is no longer there',
    ],
    ['a lost right to write', () => take(PermissionFlagsBits.SendMessages), 'I may not write in the channel'],
    ['a lost right to see', () => take(PermissionFlagsBits.ViewChannel), 'I may not see the channel'],
  ])('%s: its owner gets it directly, and reads why', async (_what, close, why) => {
    room.remind(keeper, inChat);
    await room.begin();
    close();
    await room.clock.pass(2 * minuteMs);
    expect(letters()).toHaveLength(1);
    expect(letters()[0]).toContain(`I could not post this in the channel: ${why}`);
    expect(room.standIn.sent[0]?.message['channel_id']).not.toBe(channelIds.chat);
    expect(notices()).toEqual([]);
  });

  it('a server its owner left: nothing is posted there, and the notice says so', async () => {
    room.remind(keeper, inChat);
    room.standIn.world.left.add(keeper);
    await runs();
    expect(letters()).toEqual([]);
    expect(notices()).toEqual([expect.stringContaining('we no longer share a server')]);
  });

  it('a server the bot was removed from: the notice says so', async () => {
    room.remind(keeper, inChat);
    room.standIn.world.left.add(botId);
    await runs();
    expect(letters()).toEqual([]);
    expect(notices()).toHaveLength(1);
  });

  it('a message of ours that Discord does not take: the notice has the id that is in the log', async () => {
    room.remind(keeper);
    room.standIn.failNext(posting, 400, { code: 50035, message: 'Invalid Form Body' });
    await runs();
    const id = /on our side \(error ([0-9a-f]{8})\)/.exec(notices().join())?.[1];
    expect(room.log.join('')).toContain(`"errorId":"${id}"`);
    expect(room.log.join('')).not.toContain('floss');
  });
});

describe('trouble that passes', () => {
  it.each([
    ['errors of the API', 500, undefined, 3],
    ['an API that is overloaded', 503, undefined, 2],
    ['a connection that is cut', 0, undefined, 3],
    ['a rate limit of an instant', 429, { message: 'slow', retry_after: 0.05, global: false }, 2],
    ['a global rate limit', 429, { message: 'slow', retry_after: 0.05, global: true }, 2],
    ['a rate limit of a minute', 429, { message: 'slow', retry_after: 90, global: false }, 1],
    ['direct messages opened too fast', 400, { code: 40003, message: 'too fast' }, 2],
  ] as const)('%s: it comes once', async (_what, status, body, times) => {
    room.remind(keeper);
    room.standIn.failNext(posting, status, body, {}, times);
    await runs(longMs);
    expect(letters()).toHaveLength(1);
    expect(notices()).toEqual([]);
  });

  it('while the channel of the direct messages is opened: it comes once', async () => {
    room.remind(keeper);
    room.standIn.failNext({ path: '/users/@me/channels' }, 500, undefined, {}, 2);
    await runs(longMs);
    expect(letters()).toHaveLength(1);
  });

  it('answers that are lost: it is found, and comes once', async () => {
    room.remind(keeper);
    room.remind(keeper, inChat);
    room.standIn.loseNext(posting, 2);
    await runs(longMs);
    expect(letters()).toHaveLength(2);
    const looked = room.standIn.requests.filter(
      ({ method, path }) => method === 'GET' && posting.path.test(path),
    );
    expect(looked).toHaveLength(2);
  });

  it('a lost answer where the history may not be read: the nonce keeps it from coming twice', async () => {
    room.remind(keeper, inChat);
    take(PermissionFlagsBits.ReadMessageHistory);
    room.standIn.loseNext(posting);
    await runs(longMs);
    expect(letters()).toHaveLength(1);
    expect(
      room.standIn.requests.filter(({ method, path }) => method === 'POST' && posting.path.test(path)),
    ).toHaveLength(2);
  });

  it('a gateway that is lost: it comes all the same', async () => {
    room.remind(keeper);
    await room.begin();
    await room.clock.pass(0);
    room.standIn.dropGateway('terminate', { resumable: false });
    await room.clock.pass(2 * minuteMs);
    expect(letters()).toHaveLength(1);
  });
});

describe('a process that ends', () => {
  it('after the message arrived, before that was written down: it comes once', async () => {
    room.remind(keeper);
    await room.begin();
    const crashed = room.standIn.until(() => {
      if (letters().length === 0) return undefined;
      room.crash();
      return true;
    }, 'send the reminder');
    await room.clock.pass(minuteMs);
    await crashed;
    await room.clock.pass(10 * minuteMs);
    expect(room.log.join('')).toContain('"reminder":1');
    await runs(longMs);
    expect(letters()).toHaveLength(1);
    expect(room.store().keepFor(keeper).reminders()[0]?.nextMs).toBeUndefined();
  });

  it('before the message arrived: it comes once', async () => {
    room.remind(keeper);
    room.standIn.failNext(posting, 0);
    await room.begin();
    const crashed = room.standIn.until(() => {
      if (!room.standIn.requests.some(({ path }) => posting.path.test(path))) return undefined;
      room.crash();
      return true;
    }, 'begin to send');
    await room.clock.pass(minuteMs);
    await crashed;
    await runs(longMs);
    expect(letters()).toHaveLength(1);
  });

  it('by a signal while it sends: what is under way arrives, the rest comes after the start', async () => {
    for (let index = 0; index < 40; index++) room.remind(keeper, { text: `${task} ${index}` });
    const bot = await room.begin();
    const stopped = room.standIn.until(() => letters()[4], 'send some').then(() => bot.stop());
    const passing = room.clock.pass(minuteMs);
    await stopped;
    const before = letters().length;
    expect(before).toBeLessThan(40);
    expect(room.standIn.requests.every(({ status }) => status === 200)).toBe(true);
    await room.begin();
    await passing;
    await room.clock.pass(minuteMs);
    expect(letters()).toHaveLength(40);
    expect(new Set(letters()).size).toBe(40);
  });

  it('and starts three days later: one late message', async () => {
    room.remind(keeper, { rule: { every: 'days', count: 1 } });
    room.clock.set(3 * 24 * 60 * minuteMs + 5 * minuteMs);
    await runs();
    expect(letters()).toHaveLength(1);
  });
});
