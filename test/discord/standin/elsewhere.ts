import { PermissionFlagsBits } from 'discord.js';
import { type Json, text } from './json.ts';
import type { World } from './world.ts';

const strangeGuildId = '1100000000000000900';

/** Where the bot is only somebody's own app: a server that does not have it, a group, the messages of two other people. */
export const elsewhereIds = {
  server: '1100000000000000901',
  group: '1100000000000000902',
  people: '1100000000000000903',
} as const;

/** The bot reaches none of them by itself: no route knows them. */
const channels: ReadonlyMap<string, Json> = new Map<string, Json>([
  [
    elsewhereIds.server,
    { id: elsewhereIds.server, type: 0, guild_id: strangeGuildId, name: 'lagoon', position: 0 },
  ],
  [elsewhereIds.group, { id: elsewhereIds.group, type: 3, recipients: [] }],
  [elsewhereIds.people, { id: elsewhereIds.people, type: 1, recipients: [] }],
]);

export function channelElsewhere(id: string): Json | undefined {
  return channels.get(id);
}

const guestRights =
  PermissionFlagsBits.ViewChannel |
  PermissionFlagsBits.SendMessages |
  PermissionFlagsBits.UseApplicationCommands;

/**
 * What Discord tells of an interaction there (documentation of Interactions: authorizing_integration_owners, context,
 * app_permissions; from memory): the app belongs to the person alone, key 1.
 */
export function originElsewhere(world: World, userId: string, channel: Json, mayUseApps = true): Json {
  const owners = { authorizing_integration_owners: { '1': userId } };
  const rights = { app_permissions: String(guestRights | PermissionFlagsBits.AttachFiles) };
  const guild = text(channel['guild_id']);
  if (guild === '') return { ...owners, ...rights, user: world.users.get(userId), context: 2 };
  const permissions = String(guestRights | (mayUseApps ? PermissionFlagsBits.UseExternalApps : 0n));
  return {
    ...owners,
    ...rights,
    guild_id: guild,
    guild: { id: guild, locale: 'de', features: [] },
    guild_locale: 'de',
    member: { ...world.member(userId), permissions },
    context: 0,
  };
}
