import { aboutCoralCommand } from './coral/about.ts';
import { addCoralCommand } from './coral/add.ts';
import { checkCoralsCommand } from './coral/check.ts';
import { compareCoralsCommand } from './coral/compare.ts';
import { feedCommand } from './coral/feed.ts';
import { growthCommand } from './coral/growth.ts';
import { listCoralsCommand } from './coral/list.ts';
import { mapCoralsCommand } from './coral/map.ts';
import { moveCoralCommand } from './coral/move.ts';
import { removeCoralCommand } from './coral/remove.ts';
import { suitedCommand } from './coral/suited.ts';

/** The guide to corals, and where a member's own stand; the latter only between them and the bot. */
export const coralCommands = [
  aboutCoralCommand,
  compareCoralsCommand,
  suitedCommand,
  growthCommand,
  feedCommand,
  addCoralCommand,
  checkCoralsCommand,
  moveCoralCommand,
  listCoralsCommand,
  mapCoralsCommand,
  removeCoralCommand,
] as const;
