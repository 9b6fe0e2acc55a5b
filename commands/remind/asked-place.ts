import { z } from 'zod';
import { Problem } from '../../core/problem.ts';
import type { Context } from '../command.ts';
import { idOption } from '../options.ts';
import type { Place } from '../reminder.ts';

export const placeOptions = {
  channel: idOption(
    'channel',
    'A channel of this server to post it in; a direct message if left out',
  ).optional(),
  where: z
    .enum(['direct message', 'reminder channel'])
    .describe('A direct message, or the channel this server has for reminders')
    .optional(),
};

export interface PlaceInput {
  readonly channel?: string | undefined;
  readonly where?: 'direct message' | 'reminder channel' | undefined;
}

/**
 * Where a reminder goes; undefined where it is not said.
 *
 * @throws Problem for a channel the asker may not write in, or the bot cannot.
 */
export function askedPlace({ channel, where }: PlaceInput, { server }: Context): Place | undefined {
  if (channel === undefined && where !== 'reminder channel') {
    return where === undefined ? undefined : { kind: 'direct' };
  }
  if (server === undefined) {
    throw new Problem('A channel can be chosen only on a server that has me.', {
      field: channel === undefined ? 'where' : 'channel',
      hint: 'Say this there, or leave it out for a direct message.',
    });
  }
  const channelId = channel ?? server.settings().reminderChannelId;
  if (channelId === undefined) {
    throw new Problem('This server has no channel for reminders.', {
      field: 'where',
      hint: 'Name one with channel, or leave it out for a direct message.',
    });
  }
  const field = channel === undefined ? 'where' : 'channel';
  if (!server.mayWrite(channelId)) {
    throw new Problem('You can not write in that channel, so I do not post for you there.', { field });
  }
  const lacking = server.lacks(channelId);
  if (lacking.length > 0) {
    throw new Problem('I can not post in that channel.', {
      field,
      limit: `a channel where I have the permissions ${lacking.join(', ')}`,
    });
  }
  return { kind: 'channel', serverId: server.id, channelId };
}
