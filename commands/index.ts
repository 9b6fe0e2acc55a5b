import { aboutCommand } from './about.ts';
import { askCommand } from './ask.ts';
import type { Command } from './command.ts';
import { checkupCommand } from './checkup.ts';
import { claimCommand } from './claim.ts';
import { convertCommand } from './convert.ts';
import { coralCommands } from './coral.ts';
import { deskCommands } from './desk.ts';
import { doseCommands } from './dose.ts';
import { helpCommand } from './help.ts';
import { lightCommands } from './light.ts';
import { logCommands } from './log.ts';
import { mydataCommands } from './mydata.ts';
import { primerCommand } from './primer.ts';
import { remindCommands } from './remind.ts';
import { zoneCommand } from './remind/zone.ts';
import { salinityCommands } from './salinity.ts';
import { tankCommands } from './tank.ts';
import { triageCommand } from './triage.ts';
import { unitsCommand } from './units.ts';
import { urgentCommand } from './urgent.ts';
import { waterCommands } from './water.ts';
import { waterchangeCommands } from './waterchange.ts';

/** In the order help lists them. */
const helped = [
  askCommand,
  urgentCommand,
  triageCommand,
  ...doseCommands,
  ...waterchangeCommands,
  ...waterCommands,
  ...salinityCommands,
  ...lightCommands,
  ...tankCommands,
  ...coralCommands,
  ...logCommands,
  ...remindCommands,
  zoneCommand,
  unitsCommand,
  checkupCommand,
  ...mydataCommands,
  ...deskCommands,
  convertCommand,
  claimCommand,
  primerCommand,
  aboutCommand,
] as const;

const list = [...helped, helpCommand(helped)] as const;

/** One of them, with its own name and options. */
export type Listed = (typeof list)[number];

/** Every command. */
export const commands: readonly Command[] = list;

/** The command of a path, or undefined. */
export function findCommand(path: readonly string[]): Command | undefined {
  return commands.find(
    (command) => command.path.length === path.length && command.path.every((name, i) => name === path[i]),
  );
}
