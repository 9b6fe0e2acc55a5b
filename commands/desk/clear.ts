import { z } from 'zod';
import type { Answer } from '../answer.ts';
import { defineCommand } from '../command.ts';
import { quietSettings, type DeskSettings } from '../server.ts';
import { managedServer } from './managing.ts';
import { settingsAnswer } from './settings-answer.ts';

const parts = {
  units: { units: quietSettings.units },
  reminders: { reminderChannelId: undefined },
  helpers: { helperRoleId: undefined },
  public: { publicChannelIds: quietSettings.publicChannelIds },
  everything: { ...quietSettings, reminderChannelId: undefined, helperRoleId: undefined },
} as const satisfies Readonly<Record<string, Partial<DeskSettings>>>;

export const clearCommand = defineCommand({
  path: ['desk', 'clear'],
  summary: 'Takes a setting of this server back, to its quiet default',
  example: '/desk clear what:public',
  private: true,
  managers: true,
  options: z.strictObject({
    what: z.enum(Object.keys(parts) as [keyof typeof parts]).describe('Which setting'),
  }),
  run: ({ what }, context): Answer => {
    const server = managedServer(context);
    server.change({ ...server.settings(), ...parts[what] });
    return settingsAnswer(server, 'desk.takenBack');
  },
});
