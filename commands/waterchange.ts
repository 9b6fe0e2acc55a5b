import { dripCommand } from './waterchange/drip.ts';
import { goalCommand } from './waterchange/goal.ts';
import { onceCommand } from './waterchange/once.ts';
import { routineCommand } from './waterchange/routine.ts';
import { sumCommand } from './waterchange/sum.ts';

export const waterchangeCommands = [
  onceCommand,
  goalCommand,
  routineCommand,
  dripCommand,
  sumCommand,
] as const;
