import { GuildMember, PermissionFlagsBits } from 'discord.js';
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

/** The server something was asked in. Nothing is looked up before it is called. */
export interface ServerHere extends Server {
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

/** The server of an interaction; undefined in direct messages. */
export function serverOf(desk: SettingsDesk, interaction: Answerable): ServerHere | undefined {
  const { guildId, channelId, member, memberPermissions, appPermissions } = interaction;
  if (guildId === null || channelId === null) return undefined;
  const rights = { memberRights: memberPermissions, botRights: appPermissions };
  return serverAt(desk, { serverId: guildId, channelId, guild: interaction.guild, member, ...rights });
}

/** The server of a message; undefined in direct messages. Its writer manages nothing by it. */
export function serverOfMessage(desk: SettingsDesk, message: Message): ServerHere | undefined {
  const { guildId, channelId, guild, member } = message;
  if (guildId === null) return undefined;
  return serverAt(desk, { serverId: guildId, channelId, guild, member, memberRights: null, botRights: null });
}

function serverAt(desk: SettingsDesk, where: Where): ServerHere {
  const { serverId, channelId, guild, member, memberRights, botRights } = where;
  const settings = (): DeskSettings => desk.settingsOf(serverId);
  const mayManage = (): boolean => memberRights?.has(PermissionFlagsBits.ManageGuild) ?? false;
  const channelOf = (id: string): GuildBasedChannel | undefined => guild?.channels.cache.get(id);
  const rightsOf = (id: string, own: Rights | null, someone: unknown): Rights | null => {
    if (id === channelId && own !== null) return own;
    const channel = channelOf(id);
    return someone instanceof GuildMember && channel !== undefined ? channel.permissionsFor(someone) : null;
  };
  return {
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
export function watchedServer(server: ServerHere, onWrite: () => void): ServerHere {
  const change: Server['change'] = (settings) => {
    onWrite();
    server.change(settings);
  };
  return Object.create(server, { change: { value: change, enumerable: true } }) as ServerHere;
}
