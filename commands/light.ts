import type { Command } from './command.ts';
import { dimCommand } from './light/dim.ts';
import { hoursCommand } from './light/hours.ts';
import { luxCommand } from './light/lux.ts';
import { rampCommand } from './light/ramp.ts';

export const lightCommands: readonly Command[] = [hoursCommand, dimCommand, rampCommand, luxCommand];
