import type { Command } from './command.ts';
import { addCoralCommand } from './coral/add.ts';
import { checkCoralsCommand } from './coral/check.ts';
import { listCoralsCommand } from './coral/list.ts';
import { moveCoralCommand } from './coral/move.ts';
import { removeCoralCommand } from './coral/remove.ts';

/** The guide to corals, and where a member's own stand; the latter only between them and the bot. */
export const coralCommands: readonly Command[] = [
  addCoralCommand,
  checkCoralsCommand,
  moveCoralCommand,
  listCoralsCommand,
  removeCoralCommand,
];
