import { aggressionSources } from './sources/aggression.ts';
import { careSources } from './sources/care.ts';
import { healthSources } from './sources/health.ts';
import { namesSources } from './sources/names.ts';

/** Every source the coral guide and the cards name. */
export const coralSources = {
  ...namesSources,
  ...careSources,
  ...aggressionSources,
  ...healthSources,
} as const;

export type CoralSourceKey = keyof typeof coralSources;
