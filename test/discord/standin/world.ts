import { PermissionFlagsBits } from 'discord.js';
import { type Json, list, record, text } from './json.ts';

const since = '2024-03-01T12:00:00.000000+00:00';

export const applicationId = '1100000000000000001';
export const guildId = '1100000000000000100';

/** People of an invented club. The bot's user id equals its application id, as it does for new bots. */
export const userIds = {
  bot: applicationId,
  keeper: '1100000000000000011',
  second: '1100000000000000012',
  steward: '1100000000000000013',
  /** Takes no direct messages. */
  closed: '1100000000000000014',
} as const;

export const channelIds = {
  chat: '1100000000000000201',
  numbers: '1100000000000000202',
  /** The bot may read but not write here. */
  notices: '1100000000000000203',
} as const;

const memberRights =
  PermissionFlagsBits.ViewChannel |
  PermissionFlagsBits.SendMessages |
  PermissionFlagsBits.ReadMessageHistory |
  PermissionFlagsBits.AttachFiles |
  PermissionFlagsBits.EmbedLinks |
  PermissionFlagsBits.UseApplicationCommands;

/** Types of channels that are threads. */
const threads: ReadonlySet<unknown> = new Set([10, 11, 12]);

export interface World {
  readonly users: ReadonlyMap<string, Json>;
  /** People who take no direct messages. */
  readonly closed: Set<string>;
  /** People who are not in the guild; the bot too can be one of them. */
  readonly left: Set<string>;
  readonly addPerson: (id: string, name: string) => void;
  /** Guild channels, and direct-message channels once opened. */
  readonly channels: Map<string, Json>;
  readonly rightsOf: (userId: string) => string;
  /** The same in one channel, its overwrites counted; a thread has those of the channel it is in. */
  readonly rightsIn: (where: Json, userId: string) => string;
  readonly member: (userId: string) => Json;
  readonly guild: () => Json;
  readonly roles: () => readonly Json[];
}

function user(id: string, username: string, name: string): Json {
  const bot = id === applicationId;
  return { id, username, global_name: name, discriminator: '0', avatar: null, public_flags: 0, bot };
}

function channel(id: string, name: string, position: number, overwrites: readonly Json[] = []): Json {
  const fixed = {
    type: 0,
    guild_id: guildId,
    parent_id: null,
    nsfw: false,
    topic: null,
    last_message_id: null,
  };
  return { id, name, position, permission_overwrites: overwrites, rate_limit_per_user: 0, ...fixed };
}

export function createWorld(): World {
  const users = new Map<string, Json>();
  const people: readonly [keyof typeof userIds, string][] = [
    ['bot', 'Sumpside'],
    ['keeper', 'Mara Quillon'],
    ['second', 'Teo Brackwell'],
    ['steward', 'Odile Fenwater'],
    ['closed', 'Ivo Lowtide'],
  ];
  for (const [key, name] of people) users.set(userIds[key], user(userIds[key], key, name));
  const silent = denying(PermissionFlagsBits.SendMessages);
  const channels = new Map<string, Json>([
    [channelIds.chat, channel(channelIds.chat, 'harbour-chat', 0)],
    [channelIds.numbers, channel(channelIds.numbers, 'numbers', 1)],
    [channelIds.notices, channel(channelIds.notices, 'notices', 2, [silent])],
  ]);
  const rightsOf = (userId: string): string =>
    String(userId === userIds.steward ? memberRights | PermissionFlagsBits.ManageGuild : memberRights);
  const member = (userId: string): Json => ({
    user: users.get(userId),
    roles: userId === userIds.steward ? [stewardRole] : [],
    joined_at: since,
    nick: null,
    avatar: null,
    deaf: false,
    mute: false,
    flags: 0,
    pending: false,
  });
  const rightsIn = (where: Json, userId: string): string => {
    const place = threads.has(where['type']) ? channels.get(text(where['parent_id'])) : where;
    const overwrites = list(place?.['permission_overwrites']).map(record);
    const whose = [[guildId], list(member(userId)['roles']), [userId]];
    const rights = whose
      .flatMap((ids) => overwrites.filter(({ id }) => ids.includes(id)))
      .reduce(
        (sum, { allow, deny }) => (sum & ~BigInt(text(deny))) | BigInt(text(allow)),
        BigInt(rightsOf(userId)),
      );
    return String(rights);
  };
  const inGuild = (): Json[] => [...channels.values()].filter((each) => each['guild_id'] === guildId);
  const guild = (): Json => ({
    ...guildBase,
    channels: inGuild(),
    members: [...users.keys()].map(member),
    member_count: users.size,
  });
  return {
    users,
    closed: new Set([userIds.closed]),
    left: new Set(),
    addPerson: (id, name) => void users.set(id, user(id, name.toLowerCase().replaceAll(' ', '.'), name)),
    channels,
    rightsOf,
    rightsIn,
    member,
    guild,
    roles: () => [...guildRoles],
  };
}

/** An entry of `permission_overwrites` that takes rights from everyone, the bot too. */
export function denying(rights: bigint): Json {
  return { id: guildId, type: 0, allow: '0', deny: String(rights) };
}

export const stewardRole = '1100000000000000302';

function role(id: string, name: string, permissions: bigint, position: number): Json {
  const fixed = { color: 0, hoist: false, managed: false, mentionable: false, flags: 0 };
  return { id, name, permissions: String(permissions), position, ...fixed };
}

const guildRoles: readonly Json[] = [
  role(guildId, '@everyone', memberRights, 0),
  role(stewardRole, 'stewards', memberRights | PermissionFlagsBits.ManageGuild, 1),
];

const guildBase: Json = {
  id: guildId,
  name: 'Fenwater Reef Circle',
  owner_id: userIds.steward,
  roles: guildRoles,
  icon: null,
  splash: null,
  description: null,
  features: [],
  emojis: [],
  stickers: [],
  threads: [],
  presences: [],
  voice_states: [],
  stage_instances: [],
  guild_scheduled_events: [],
  afk_timeout: 300,
  afk_channel_id: null,
  system_channel_id: null,
  system_channel_flags: 0,
  verification_level: 1,
  default_message_notifications: 1,
  explicit_content_filter: 0,
  mfa_level: 0,
  premium_tier: 0,
  nsfw_level: 0,
  preferred_locale: 'en-GB',
  joined_at: since,
  large: false,
};
