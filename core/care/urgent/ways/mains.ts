import type { Way } from '../../said.ts';
import type { UrgentId } from '../cards.ts';
import { fire } from './fire.ts';
import { flood } from './flood.ts';
import { powerCut } from './power-cut.ts';

/** Fire, water near mains, and no power. */
export const mainsWays = {
  'fire or sparks': fire,
  flood,
  'power cut': powerCut,
} as const satisfies Partial<Record<UrgentId, readonly Way[]>>;
