import { editCommand } from './tank/edit.ts';
import { listCommand } from './tank/list.ts';
import { newCommand } from './tank/new.ts';
import { removeCommand } from './tank/remove.ts';
import { shareCommand } from './tank/share.ts';
import { showCommand } from './tank/show.ts';
import { showToCommand } from './tank/show-to.ts';
import { shownCommand } from './tank/shown.ts';
import { useTankCommand } from './tank/use.ts';

export const tankCommands = [
  newCommand,
  showCommand,
  editCommand,
  listCommand,
  useTankCommand,
  shareCommand,
  showToCommand,
  shownCommand,
  removeCommand,
] as const;
