import { diluteCommand } from './water/dilute.ts';
import { movedCommand } from './water/moved.ts';
import { kitsCommand } from './water/kits.ts';
import { paceCommand } from './water/pace.ts';
import { spillCommand } from './water/spill.ts';
import { untilCommand } from './water/until.ts';
import { warmCommand } from './water/warm.ts';

/** What becomes of the water in a tank, apart from dosing it and changing it. */
export const waterCommands = [
  untilCommand,
  paceCommand,
  kitsCommand,
  movedCommand,
  warmCommand,
  spillCommand,
  diluteCommand,
] as const;
