import { z } from 'zod';
import { Problem } from '../../core/problem.ts';
import type { Context } from '../command.ts';
import { idOption } from '../options.ts';
import type { Place } from '../reminder.ts';
import { say } from '../../core/wording/say.ts';

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
    throw new Problem(say('remind.channelCanBeChosen'), {
      field: channel === undefined ? 'where' : 'channel',
      hint: say('remind.sayThereOrLeave'),
    });
  }
  const channelId = channel ?? server.settings().reminderChannelId;
  if (channelId === undefined) {
    throw new Problem(say('remind.serverHasNoChannel'), {
      field: 'where',
      hint: say('remind.nameOneWithChannel'),
    });
  }
  const field = channel === undefined ? 'where' : 'channel';
  if (!server.mayWrite(channelId)) {
    throw new Problem(say('remind.youCanNotWrite'), { field });
  }
  const lacking = server.lacks(channelId);
  if (lacking.length > 0) {
    throw new Problem(say('remind.iCanNotPost'), {
      field,
      limit: say('remind.channelWhereIHave', { names: lacking.join(', ') }),
    });
  }
  return { kind: 'channel', serverId: server.id, channelId };
}
