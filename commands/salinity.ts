import { adjustCommand } from './salinity/adjust.ts';
import { checkCommand } from './salinity/check.ts';
import { convertSalinityCommand } from './salinity/convert.ts';
import { mixCommand } from './salinity/mix.ts';

export const salinityCommands = [convertSalinityCommand, adjustCommand, mixCommand, checkCommand] as const;
