import type { ServerHere } from '../asked/server.ts';

/** Why nothing can be posted in the channel at hand, in words that follow a colon; undefined where it can. */
export function hindrance(server: ServerHere): string | undefined {
  const { channelId } = server;
  if (!server.isPublic()) return 'in this channel I answer for your eyes only, as /desk public says';
  if (!server.mayWrite(channelId)) return 'you may not write in this channel';
  const lacked = server.lacks(channelId);
  return lacked.length === 0 ? undefined : `I lack ${lacked.join(', ')} in this channel`;
}
