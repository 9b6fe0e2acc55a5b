import { addCommand } from './log/add.ts';
import { logDoseCommand } from './log/dose.ts';
import { exportCommand } from './log/export.ts';
import { importCommand } from './log/import.ts';
import { showCommand } from './log/show.ts';
import { trendCommand } from './log/trend.ts';
import { undoCommand } from './log/undo.ts';
import { watchCommand } from './log/watch.ts';

/** The readings and doses of a member's tank, one subcommand a file. */
export const logCommands = [
  addCommand,
  logDoseCommand,
  showCommand,
  trendCommand,
  undoCommand,
  watchCommand,
  importCommand,
  exportCommand,
] as const;
