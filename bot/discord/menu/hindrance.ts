import { say } from '../../../core/wording/say.ts';
import type { PlaceHere } from '../asked/place.ts';

/** Why nothing can be posted in the channel at hand, in words that follow a colon; undefined where it can. */
export function hindrance({ channelId, server, isPublic }: PlaceHere): string | undefined {
  if (server === undefined) return say('discord.ownAppOnly');
  if (!isPublic()) return say('discord.answersPrivately');
  if (!server.mayWrite(channelId)) return say('discord.mayNotWrite');
  const lacked = server.lacks(channelId);
  return lacked.length === 0 ? undefined : say('discord.botLacks', { rights: lacked.join(', ') });
}
