import { z } from 'zod';
import { Problem } from '../../core/problem.ts';
import { say } from '../../core/wording/say.ts';
import type { Answer } from '../answer.ts';
import { defineCommand } from '../command.ts';
import { idOption } from '../options.ts';
import { managedServer } from './managing.ts';
import { settingsAnswer } from './settings-answer.ts';

/** Channels that can be named. */
export const MOST_PUBLIC = 20;

export const publicCommand = defineCommand({
  path: ['desk', 'public'],
  summary: 'Channels where everyone sees my answers; with none named, all of them',
  example: '/desk public add:123456789012345678',
  private: true,
  managers: true,
  options: z.strictObject({
    add: idOption(
      'channel',
      'A channel where answers are public; a forum stands for all its posts',
    ).optional(),
    remove: idOption('channel', 'A channel to take off the list').optional(),
  }),
  run: ({ add, remove }, context): Answer => {
    const server = managedServer(context);
    const settings = server.settings();
    const before = settings.publicChannelIds;
    if (add === undefined && remove === undefined) throw nothing();
    if (remove !== undefined && !before.includes(remove)) throw notListed(remove, before.length === 0);
    const after = before.filter((id) => id !== remove && id !== add);
    if (add !== undefined && add !== remove) after.push(add);
    if (after.length > MOST_PUBLIC) {
      const limit = say('desk.limitChannels', { most: MOST_PUBLIC });
      throw new Problem(say('desk.listFull'), { field: 'add', limit, hint: say('desk.hintTakeOneOff') });
    }
    server.change({ ...settings, publicChannelIds: after });
    const opened = after.length === 0 ? 'desk.noneListed' : 'desk.set';
    return settingsAnswer(server, opened);
  },
});

function nothing(): Problem {
  return new Problem(say('desk.whichChannel'), {
    field: 'add',
    limit: say('desk.limitAddOrRemove'),
    hint: say('desk.hintShowOrClear'),
  });
}

function notListed(given: string, isEmpty: boolean): Problem {
  return new Problem(say('desk.notListed'), {
    field: 'remove',
    given,
    limit: isEmpty ? say('desk.limitListEmpty') : undefined,
    hint: say('desk.hintShow'),
  });
}
