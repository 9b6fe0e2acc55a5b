import type { Found } from '../../core/care/symptoms/rank.ts';
import type { OwnContext } from '../command.ts';
import { coralEvidence } from './coral-evidence.ts';
import { logEvidence, oldReadings } from './log-evidence.ts';

/** What the tank in use can say to a symptom. */
export interface Evidence {
  readonly found: readonly Found[];
  readonly read: readonly string[];
  readonly unused: readonly string[];
  readonly hazards: readonly string[];
  readonly hasCorals: boolean;
  readonly hasTank: boolean;
}

const NONE: Evidence = { found: [], read: [], unused: [], hazards: [], hasCorals: false, hasTank: false };

/** Signs in the log and among the corals of the tank in use; of one coral where `coral` names it. */
export function evidenceOf(context: OwnContext, coral?: string): Evidence {
  const tank = context.keep?.tankInUse();
  if (context.keep === undefined || tank === undefined) return NONE;
  const { keep, nowMs } = context;
  const corals = coralEvidence(keep, tank, nowMs, coral);
  const log = logEvidence(keep, tank, context);
  return {
    found: [...log, ...corals.found],
    read: [`looked at the log and the corals of ${tank.name}`, ...corals.read],
    unused: oldReadings(keep, tank, nowMs),
    hazards: corals.hazards,
    hasCorals: corals.count > 0,
    hasTank: true,
  };
}
