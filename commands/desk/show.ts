import { z } from 'zod';
import type { Answer } from '../answer.ts';
import { defineCommand } from '../command.ts';
import { managedServer } from './managing.ts';
import { settingsAnswer } from './settings-answer.ts';

export const showCommand = defineCommand({
  path: ['desk', 'show'],
  summary: "This server's settings, and the permissions I lack in its channels",
  example: '/desk show',
  private: true,
  managers: true,
  options: z.strictObject({}),
  run: (_, context): Answer => settingsAnswer(managedServer(context), 'desk.settingsOfServer'),
});
