import { asked, type CaseId } from '../corpus.ts';
import type { Case } from './case.ts';
import { care } from './care.ts';
import { corals } from './corals.ts';
import { schedule } from './schedule.ts';
import { sums } from './sums.ts';

/** Every case by its name. */
export const cases: Readonly<Record<string, Case>> = {
  ...Object.fromEntries(
    Object.entries(sums).map(([id, expected]) => [id, { asked: asked[id as CaseId], ...expected }]),
  ),
  ...care,
  ...corals,
  ...schedule,
};
