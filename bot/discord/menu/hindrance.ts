import type { PlaceHere } from '../asked/place.ts';

/** Why nothing can be posted in the channel at hand, in words that follow a colon; undefined where it can. */
export function hindrance({ channelId, server, isPublic }: PlaceHere): string | undefined {
  if (server === undefined) return 'here I am your own app only, and post nothing by myself';
  if (!isPublic()) return 'in this channel I answer for your eyes only, as /desk public says';
  if (!server.mayWrite(channelId)) return 'you may not write in this channel';
  const lacked = server.lacks(channelId);
  return lacked.length === 0 ? undefined : `I lack ${lacked.join(', ')} in this channel`;
}
