import { dripCommand } from './waterchange/drip.ts';
import { goalCommand } from './waterchange/goal.ts';
import { onceCommand } from './waterchange/once.ts';
import { routineCommand } from './waterchange/routine.ts';

export const waterchangeCommands = [onceCommand, goalCommand, routineCommand, dripCommand] as const;
