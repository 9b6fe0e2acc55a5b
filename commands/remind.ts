import { calendarCommand } from './remind/calendar.ts';
import { changeCommand } from './remind/change.ts';
import { doneCommand } from './remind/done.ts';
import { enterCommand } from './remind/enter.ts';
import { handOverCommand } from './remind/hand-over.ts';
import { laterCommand } from './remind/later.ts';
import { listCommand } from './remind/list.ts';
import { pauseCommand } from './remind/pause.ts';
import { planCommand } from './remind/plan.ts';
import { removeReminderCommand } from './remind/remove.ts';
import { resumeCommand } from './remind/resume.ts';
import { severalCommand } from './remind/several.ts';
import { sitCommand } from './remind/sit.ts';
import { skipCommand } from './remind/skip.ts';
import { taskCommand } from './remind/task.ts';
import { testCommand } from './remind/test.ts';

/** What a member wants to be told when; all of it only between them and the bot. */
export const remindCommands = [
  testCommand,
  taskCommand,
  severalCommand,
  planCommand,
  listCommand,
  doneCommand,
  enterCommand,
  laterCommand,
  skipCommand,
  changeCommand,
  pauseCommand,
  resumeCommand,
  removeReminderCommand,
  handOverCommand,
  sitCommand,
  calendarCommand,
] as const;
