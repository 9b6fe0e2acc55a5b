import type { ServerHere } from '../asked/server.ts';
import { say } from '../../../core/wording/say.ts';

/** Why nothing can be posted in the channel at hand, in words that follow a colon; undefined where it can. */
export function hindrance(server: ServerHere): string | undefined {
  const { channelId } = server;
  if (!server.isPublic()) return say('discord.answersPrivately');
  if (!server.mayWrite(channelId)) return say('discord.mayNotWrite');
  const lacked = server.lacks(channelId);
  return lacked.length === 0 ? undefined : say('discord.botLacks', { rights: lacked.join(', ') });
}
