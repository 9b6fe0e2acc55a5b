import {
  ApplicationIntegrationType,
  GuildMember,
  InteractionContextType,
  PermissionFlagsBits,
} from 'discord.js';
import type { Guild, GuildBasedChannel, Message, PermissionsBitField } from 'discord.js';
import type { DeskSettings, Server } from '../../../commands/server.ts';
import { notManaging } from '../../../commands/desk/managing.ts';
import type { Answerable } from '../callback.ts';
import { lackedIn, mayWriteIn } from './permissions.ts';

/** Where settings of servers are kept. */
export interface SettingsDesk {
  /** Held in memory: a look costs no query. */
  readonly settingsOf: (serverId: string) => DeskSettings;
  readonly changeSettings: (serverId: string, settings: DeskSettings) => void;
}

/** Where others read what is asked; undefined stands for direct messages with the bot. */
export interface PlaceHere {
  readonly channelId: string;
  /** The server, where it has the bot: elsewhere the bot is its asker's own app and nothing is set or sent. */
  readonly server: Server | undefined;
  /** Whether everyone may see answers in this channel. */
  readonly isPublic: () => boolean;
  /** Whether it is a thread or a post of a forum. */
  readonly isThread: () => boolean;
}

type Rights = Readonly<PermissionsBitField>;

interface Where {
  readonly serverId: string;
  readonly channelId: string;
  readonly guild: Guild | null;
  readonly member: unknown;
  /** In this very channel, as Discord worked them out; null where it does not say. */
  readonly memberRights: Rights | null;
  readonly botRights: Rights | null;
}

/** The place of an interaction. Nothing is looked up before it is called. */
export function placeOf(desk: SettingsDesk, interaction: Answerable): PlaceHere | undefined {
  const { guildId, channelId, member, memberPermissions, appPermissions } = interaction;
  if (isAlone(interaction) || channelId === null) return undefined;
  if (guildId === null || isGuest(interaction)) return asGuest(channelId, memberPermissions);
  const rights = { memberRights: memberPermissions, botRights: appPermissions };
  return placeIn(desk, { serverId: guildId, channelId, guild: interaction.guild, member, ...rights });
}

/** The place of a message. Its writer manages nothing by it. */
export function placeOfMessage(desk: SettingsDesk, message: Message): PlaceHere | undefined {
  const { guildId, channelId, guild, member } = message;
  if (guildId === null) return undefined;
  return placeIn(desk, { serverId: guildId, channelId, guild, member, memberRights: null, botRights: null });
}

/** Whether nobody but the asker and the bot is there. */
export function isAlone({ guildId, context }: Pick<Answerable, 'guildId' | 'context'>): boolean {
  return guildId === null && context !== InteractionContextType.PrivateChannel;
}

/** Whether the bot is there only as the app of the one who asks: it reaches nothing there but by its answers. */
export function isGuest(interaction: Answerable): boolean {
  const { guildId, authorizingIntegrationOwners: owners } = interaction;
  return (
    !isAlone(interaction) && (guildId === null || owners[ApplicationIntegrationType.GuildInstall] !== guildId)
  );
}

/** Discord shows answers to the asker alone where they may not use apps of their own; then they are written so. */
function asGuest(channelId: string, rights: Rights | null): PlaceHere {
  const isPublic = (): boolean => rights?.has(PermissionFlagsBits.UseExternalApps) ?? true;
  return { channelId, server: undefined, isPublic, isThread: () => false };
}

function placeIn(desk: SettingsDesk, where: Where): PlaceHere {
  const { serverId, channelId, guild, member, memberRights, botRights } = where;
  const settings = (): DeskSettings => desk.settingsOf(serverId);
  const mayManage = (): boolean => memberRights?.has(PermissionFlagsBits.ManageGuild) ?? false;
  const channelOf = (id: string): GuildBasedChannel | undefined => guild?.channels.cache.get(id);
  const rightsOf = (id: string, own: Rights | null, someone: unknown): Rights | null => {
    if (id === channelId && own !== null) return own;
    const channel = channelOf(id);
    return someone instanceof GuildMember && channel !== undefined ? channel.permissionsFor(someone) : null;
  };
  const server: Server = {
    id: serverId,
    channelId,
    settings,
    get mayManage() {
      return mayManage();
    },
    change: (changed) => {
      if (!mayManage()) throw notManaging();
      desk.changeSettings(serverId, changed);
    },
    mayWrite: (id) => mayWriteIn(channelOf(id), rightsOf(id, memberRights, member), id === channelId),
    lacks: (id) => lackedIn(channelOf(id), rightsOf(id, botRights, guild?.members.me)),
  };
  return {
    channelId,
    server,
    isThread: () => channelOf(channelId)?.isThread() === true,
    isPublic: () => {
      const { publicChannelIds } = settings();
      if (publicChannelIds.length === 0 || publicChannelIds.includes(channelId)) return true;
      const channel = channelOf(channelId);
      const parentId = channel?.isThread() === true ? channel.parentId : null;
      return parentId !== null && publicChannelIds.includes(parentId);
    },
  };
}

/** The same server, which tells of each change before it is made; it looks nothing up by itself either. */
export function watchedServer(server: Server, onWrite: () => void): Server {
  const change: Server['change'] = (settings) => {
    onWrite();
    server.change(settings);
  };
  return Object.create(server, { change: { value: change, enumerable: true } }) as Server;
}
