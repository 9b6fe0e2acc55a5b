import { PermissionFlagsBits } from 'discord.js';
import { announce } from '../announce.ts';
import { beforeEdit } from '../before-edit.ts';
import { checkMessage } from '../check-message.ts';
import { directChannel } from '../direct.ts';
import { absent, type Json, list, record, text } from '../json.ts';
import { time } from '../limits.ts';
import { changeMessage, sentOf, type StoredMessage, storeMessage } from '../message.ts';
import { checkSnowflake, within } from '../spot.ts';
import { guildId, userIds } from '../world.ts';
import { bodyOf, type Call, checked, nothing, ok, param, refuse, type Reply, type Route } from './route.ts';

/** How many messages are given where it is not said. */
const usualHistory = 50;
const one = '/channels/:channel/messages/:message';

/** Channels and the messages the bot sends to them without an interaction. */
export const channelRoutes: readonly Route[] = [
  { method: 'GET', pattern: '/channels/:channel', handle: (call) => inChannel(call, ok) },
  { method: 'GET', pattern: '/channels/:channel/messages', handle: (call) => inChannel(call, history) },
  { method: 'POST', pattern: '/channels/:channel/messages', handle: (call) => writing(call, create) },
  { method: 'POST', pattern: '/channels/:channel/typing', handle: (call) => writing(call, typing) },
  { method: 'GET', pattern: one, handle: (call) => onMessage(call, (stored) => ok(stored.wire)) },
  { method: 'PATCH', pattern: one, handle: (call) => onMessage(call, edit) },
  { method: 'DELETE', pattern: one, handle: (call) => onMessage(call, remove) },
  { method: 'POST', pattern: '/users/@me/channels', handle: openDirect },
];

function inChannel(call: Call, act: (channel: Json, call: Call) => Reply): Reply {
  const channel = call.state.world.channels.get(param(call, 'channel'));
  if (!channel) return refuse(404, 10003, 'Unknown Channel');
  const hidden = denies(channel, PermissionFlagsBits.ViewChannel) || botIsOut(call, channel);
  return hidden ? refuse(403, 50001, 'Missing Access') : act(channel, call);
}

/** Whether the channel's overwrites take this right; the stand-in knows no others. */
function denies(channel: Json, right: bigint): boolean {
  const denied = list(channel['permission_overwrites']).map((each) => BigInt(text(record(each)['deny'])));
  return denied.some((rights) => (rights & right) !== 0n);
}

function botIsOut({ state }: Call, channel: Json): boolean {
  return channel['guild_id'] === guildId && state.world.left.has(userIds.bot);
}

/** Newest first. Without the right to read the history there is nothing to read. */
function history(channel: Json, call: Call): Reply {
  const limit = Number(call.query.get('limit') ?? usualHistory);
  const refused = checked(call, (here) => within(here.at('limit'), limit, 'history.limit'));
  if (refused) return refused;
  if (denies(channel, PermissionFlagsBits.ReadMessageHistory)) return ok([]);
  const all = [...call.state.messages.values()].filter(
    (each) => each.channelId === channel['id'] && !each.deleted,
  );
  return ok(
    all
      .slice(-limit)
      .toReversed()
      .map((each) => each.wire),
  );
}

function writing(call: Call, act: (call: Call) => Reply): Reply {
  return inChannel(call, (channel) => {
    if (denies(channel, PermissionFlagsBits.SendMessages)) return refuse(403, 50013, 'Missing Permissions');
    const { closed, left } = call.state.world;
    const people = list(channel['recipients']).map((each) => text(record(each)['id']));
    const alone = people.length > 0 && [...people, userIds.bot].some((id) => left.has(id));
    if (alone) return refuse(403, 50278, 'Cannot send messages to this user due to having no mutual guilds');
    const noFiles = call.files.length > 0 && denies(channel, PermissionFlagsBits.AttachFiles);
    if (noFiles) return refuse(403, 50013, 'Missing Permissions');
    if (people.some((id) => closed.has(id))) return refuse(403, 50007, 'Cannot send messages to this user');
    return act(call);
  });
}

function create(call: Call): Reply {
  const { state, files } = call;
  const body = bodyOf(call);
  const channelId = param(call, 'channel');
  const reference = record(body['message_reference']);
  const refused = checked(call, (here) => {
    checkMessage(here, call.body, { way: 'create', files });
    const target = state.messages.get(text(reference['message_id']));
    const gone = target?.channelId !== channelId || target.deleted;
    if (!absent(reference['message_id']) && gone && reference['fail_if_not_exists'] !== false) {
      here.at('message_reference').fail('message.reference', 'Unknown message');
    }
  });
  if (refused) return refused;
  const earlier = sameNonce(call, body);
  if (earlier) return ok(earlier.wire);
  const author = state.world.users.get(userIds.bot) ?? {};
  const isReply = !absent(reference['message_id']);
  const extra = isReply ? { type: 19, message_reference: { ...reference, channel_id: channelId } } : {};
  const stored = storeMessage(state, { channelId, author, body, files, extra });
  announce(state, stored, 'MESSAGE_CREATE');
  state.sent.push(sentOf(state, stored, body, files));
  return ok(stored.wire);
}

/**
 * With enforce_nonce, a message of the same author with the same nonce made in the last minutes is given back instead
 * of a second one: as documented, whatever its channel.
 */
function sameNonce({ state }: Call, body: Json): StoredMessage | undefined {
  if (body['enforce_nonce'] !== true || absent(body['nonce'])) return undefined;
  const since = state.nowMs() - time.nonceMs;
  const found = state.sent.findLast((each) => each.body['nonce'] === body['nonce'] && each.atMs >= since);
  return found && state.messages.get(text(found.message['id']));
}

function typing({ state, params }: Call): Reply {
  state.typing.push({ channelId: params['channel'] ?? '', atMs: state.nowMs() });
  return nothing;
}

function onMessage(call: Call, act: (stored: StoredMessage, call: Call) => Reply): Reply {
  return inChannel(call, () => {
    const stored = call.state.messages.get(param(call, 'message'));
    const here = stored?.channelId === param(call, 'channel') && !stored.deleted;
    return stored && here ? act(stored, call) : refuse(404, 10008, 'Unknown Message');
  });
}

function isOwn(stored: StoredMessage): boolean {
  return record(stored.wire['author'])['id'] === userIds.bot;
}

function edit(stored: StoredMessage, call: Call): Reply {
  const { state, files } = call;
  const body = bodyOf(call);
  if (!isOwn(stored)) return refuse(403, 50005, 'Cannot edit a message authored by another user');
  const refused = checked(call, (here) =>
    checkMessage(here, call.body, { way: 'edit', files, before: beforeEdit(stored) }),
  );
  if (refused) return refused;
  changeMessage(state, stored, body, files);
  announce(state, stored, 'MESSAGE_UPDATE');
  state.sent.push(sentOf(state, stored, body, files));
  return ok(stored.wire);
}

function remove(stored: StoredMessage): Reply {
  if (!isOwn(stored)) return refuse(403, 50013, 'Missing Permissions');
  stored.deleted = true;
  return nothing;
}

function openDirect(call: Call): Reply {
  const recipient = bodyOf(call)['recipient_id'];
  const refused = checked(call, (here) => checkSnowflake(here.at('recipient_id'), recipient));
  if (refused) return refused;
  const channel = directChannel(call.state, text(recipient));
  return channel ? ok(channel) : refuse(400, 50033, 'Invalid Recipient(s)');
}
