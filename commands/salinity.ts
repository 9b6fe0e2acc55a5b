import { adjustCommand } from './salinity/adjust.ts';
import { batchCommand } from './salinity/batch.ts';
import { checkCommand } from './salinity/check.ts';
import { compareSalinityCommand } from './salinity/compare.ts';
import { convertSalinityCommand } from './salinity/convert.ts';
import { excessCommand } from './salinity/excess.ts';
import { forecastCommand } from './salinity/forecast.ts';
import { lostCommand } from './salinity/lost.ts';
import { mixCommand } from './salinity/mix.ts';

export const salinityCommands = [
  convertSalinityCommand,
  adjustCommand,
  mixCommand,
  batchCommand,
  checkCommand,
  compareSalinityCommand,
  forecastCommand,
  lostCommand,
  excessCommand,
] as const;
