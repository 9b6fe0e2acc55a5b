import type { Command } from './command.ts';
import { dripCommand } from './waterchange/drip.ts';
import { goalCommand } from './waterchange/goal.ts';
import { onceCommand } from './waterchange/once.ts';
import { routineCommand } from './waterchange/routine.ts';

export const waterchangeCommands: readonly Command[] = [
  onceCommand,
  goalCommand,
  routineCommand,
  dripCommand,
];
