import { applicationId, channelIds, guildId, userIds } from './world.ts';
import { channelElsewhere, originElsewhere } from './elsewhere.ts';
import { directChannel } from './direct.ts';
import type { Interaction } from './interaction.ts';
import type { Json } from './json.ts';
import { text } from './json.ts';
import { ranges } from './limits.ts';
import type { StoredMessage } from './message.ts';
import type { State } from './state.ts';

/** Who does something and where. Without more: the keeper, in the chat channel of the guild. */
export interface Place {
  readonly userId?: string;
  readonly channelId?: string;
  /** In the direct messages with the person instead of the guild. */
  readonly dm?: boolean;
}

/** How an interaction reaches the bot. */
export interface Delivery extends Place {
  readonly locale?: string;
  /** Whether the person may use apps of their own, in a server that does not have the bot; they may unless said. */
  readonly mayUseApps?: boolean;
  /** Its time is already over: every callback is refused with 10062. */
  readonly late?: boolean;
  /** Delivered two times, as can happen when a connection is lost. */
  readonly twice?: boolean;
}

/** The channel a place means. */
export function channelOf(state: State, place: Place): Json {
  const userId = place.userId ?? userIds.keeper;
  const channel = place.dm
    ? directChannel(state, userId)
    : whereIs(state, place.channelId ?? channelIds.chat);
  if (!channel) throw new Error('There is no such channel in the invented world');
  return channel;
}

function whereIs(state: State, channelId: string): Json | undefined {
  return state.world.channels.get(channelId) ?? channelElsewhere(channelId);
}

interface What {
  readonly type: number;
  readonly data: Json;
  readonly source?: StoredMessage;
}

/** Sends an interaction to the bot and remembers it. */
export function deliver(state: State, what: What, how: Delivery): Interaction {
  if (!state.gateway.hasSession) throw new Error('No bot is connected');
  const id = state.nextId();
  const token = `interaction-${id}`;
  const channel = channelOf(state, how);
  const payload: Json = {
    id,
    token,
    type: what.type,
    data: what.data,
    version: 1,
    application_id: applicationId,
    channel,
    channel_id: text(channel['id']),
    locale: how.locale ?? 'en-GB',
    entitlements: [],
    ...(channelElsewhere(text(channel['id'])) === undefined
      ? origin(state, how.userId ?? userIds.keeper, channel)
      : originElsewhere(state.world, how.userId ?? userIds.keeper, channel, how.mayUseApps)),
    ...(what.source && { message: what.source.wire }),
    attachment_size_limit: ranges['file.bytes'].max,
  };
  const interaction: Interaction = {
    id,
    token,
    type: what.type,
    payload,
    source: what.source,
    late: how.late ?? false,
    deliveredMs: state.nowMs(),
    callbacks: [],
    accepted: undefined,
    original: undefined,
    reply: undefined,
    edits: [],
    followUps: [],
  };
  state.interactions.set(token, interaction);
  for (let count = how.twice ? 2 : 1; count > 0; count -= 1) {
    state.gateway.dispatch('INTERACTION_CREATE', 0, () => payload);
  }
  return interaction;
}

function origin(state: State, userId: string, channel: Json): Json {
  if (channel['guild_id'] !== guildId) {
    const owners = { authorizing_integration_owners: { '0': '0' } };
    const rights = { app_permissions: state.world.rightsOf(userIds.bot) };
    return { ...owners, ...rights, user: state.world.users.get(userId), context: 1 };
  }
  return {
    guild_id: guildId,
    guild: { id: guildId, locale: 'en-GB', features: [] },
    guild_locale: 'en-GB',
    member: { ...state.world.member(userId), permissions: state.world.rightsIn(channel, userId) },
    app_permissions: state.world.rightsIn(channel, userIds.bot),
    authorizing_integration_owners: { '0': guildId },
    context: 0,
  };
}
