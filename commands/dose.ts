import { amountCommand } from './dose/amount.ts';
import { bottleCommand } from './dose/bottle.ts';
import { dailyCommand } from './dose/daily.ts';
import { effectCommand } from './dose/effect.ts';
import { labelCommand } from './dose/label.ts';
import { limewaterCommand } from './dose/limewater.ts';
import { netCommand } from './dose/net.ts';
import { solutionCommand } from './dose/solution.ts';
import { swapCommand } from './dose/swap.ts';
import { useCommand } from './dose/use.ts';

/** Everything about dosing, one subcommand a file. */
export const doseCommands = [
  amountCommand,
  effectCommand,
  useCommand,
  dailyCommand,
  solutionCommand,
  bottleCommand,
  limewaterCommand,
  swapCommand,
  netCommand,
  labelCommand,
] as const;
