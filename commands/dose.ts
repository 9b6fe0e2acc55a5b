import { amountCommand } from './dose/amount.ts';
import { effectCommand } from './dose/effect.ts';
import { limewaterCommand } from './dose/limewater.ts';
import { solutionCommand } from './dose/solution.ts';
import { useCommand } from './dose/use.ts';

/** Everything about dosing, one subcommand a file. */
export const doseCommands = [
  amountCommand,
  effectCommand,
  useCommand,
  solutionCommand,
  limewaterCommand,
] as const;
