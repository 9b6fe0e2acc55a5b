import { z } from 'zod';
import { Problem } from '../../core/problem.ts';
import { say } from '../../core/wording/say.ts';
import type { Answer } from '../answer.ts';
import { defineCommand } from '../command.ts';
import { idOption } from '../options.ts';
import type { DeskSettings, Server } from '../server.ts';
import { unitOptions, withUnits } from '../unit-options.ts';
import { managedServer } from './managing.ts';
import { settingsAnswer } from './settings-answer.ts';

const options = z.strictObject({
  ...unitOptions,
  reminders: idOption('channel', 'Where reminders go, set for a channel without naming one').optional(),
  helpers: idOption('role', 'The role of those who help members').optional(),
});

export const setCommand = defineCommand({
  path: ['desk', 'set'],
  summary: 'Sets the usual units, the channel for reminders and the helper role of this server',
  example: '/desk set volume:US gallons alkalinity:dKH',
  private: true,
  managers: true,
  options,
  run: (input, context): Answer => {
    const server = managedServer(context);
    const given = Object.values(input).filter((value) => value !== undefined);
    if (given.length === 0) {
      throw new Problem(say('desk.nothingToSet'), {
        field: 'options',
        limit: Object.keys(options.shape).join(', '),
        hint: say('desk.hintSet'),
      });
    }
    server.change(changed(server, input));
    return settingsAnswer(server, 'desk.set');
  },
});

function changed(server: Server, input: z.infer<typeof options>): DeskSettings {
  const before = server.settings();
  const { reminders, helpers } = input;
  if (reminders !== undefined && !server.mayWrite(reminders)) throw notWritable(reminders);
  return {
    ...before,
    units: withUnits(before.units, input),
    reminderChannelId: reminders ?? before.reminderChannelId,
    helperRoleId: helpers ?? before.helperRoleId,
  };
}

function notWritable(given: string): Problem {
  return new Problem(say('desk.nobodyReminded'), {
    field: 'reminders',
    given,
    limit: say('desk.limitWritable'),
  });
}
