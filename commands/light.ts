import { darkCommand } from './light/dark.ts';
import { dimCommand } from './light/dim.ts';
import { hoursCommand } from './light/hours.ts';
import { luxCommand } from './light/lux.ts';
import { measuredCommand } from './light/measured.ts';
import { rampCommand } from './light/ramp.ts';
import { rangeCommand } from './light/range.ts';

export const lightCommands = [
  rangeCommand,
  hoursCommand,
  dimCommand,
  rampCommand,
  luxCommand,
  measuredCommand,
  darkCommand,
] as const;
