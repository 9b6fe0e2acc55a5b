import { ChannelType, PermissionFlagsBits } from 'discord.js';
import type { GuildBasedChannel, PermissionsBitField } from 'discord.js';

type Rights = Readonly<PermissionsBitField>;
type Channel = GuildBasedChannel | undefined;

const { ViewChannel, SendMessages, SendMessagesInThreads, ReadMessageHistory } = PermissionFlagsBits;

/** Channels that hold posts, not messages. */
const forums: ReadonlySet<unknown> = new Set([ChannelType.GuildForum, ChannelType.GuildMedia]);

/**
 * Whether someone of these rights may write in a channel. A private thread only counts where they are in it already:
 * who else is in it is not known without a privileged intent.
 */
export function mayWriteIn(channel: Channel, rights: Rights | null, isHere: boolean): boolean {
  if (rights === null || (channel !== undefined && !channel.isTextBased())) return false;
  if (channel?.type === ChannelType.PrivateThread && !isHere) return false;
  return rights.has([ViewChannel, writing(channel)]);
}

/**
 * What the bot needs to answer a message, and to look whether a reminder has arrived. Without Attach Files the picture of
 * an answer is told in words.
 */
export function lackedIn(channel: Channel, rights: Rights | null): readonly string[] {
  const inPosts = writing(channel) === SendMessagesInThreads;
  const needed: readonly (readonly [string, bigint])[] = [
    ['View Channel', ViewChannel],
    inPosts ? ['Send Messages in Threads', SendMessagesInThreads] : ['Send Messages', SendMessages],
    ['Read Message History', ReadMessageHistory],
  ];
  return needed.filter(([, flag]) => rights?.has(flag) !== true).map(([name]) => name);
}

function writing(channel: Channel): bigint {
  const inThreads = channel?.isThread() === true || forums.has(channel?.type);
  return inThreads ? SendMessagesInThreads : SendMessages;
}
