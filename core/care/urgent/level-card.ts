import type { Side } from '../../water/limits.ts';
import type { ParameterId } from '../../water/parameter.ts';
import type { UrgentId } from './cards.ts';

/** The card for a level that is urgent on one side; what has none is told in the checkup alone. */
const byLevel: Readonly<Partial<Record<ParameterId, Readonly<Partial<Record<Side, UrgentId>>>>>> = {
  ammonia: { high: 'ammonia' },
  salinity: { low: 'salinity crash', high: 'salinity crash' },
  temperature: { low: 'cold water', high: 'overheating' },
  alkalinity: { high: 'overdose' },
  ph: { high: 'overdose' },
};

/** Every card that a number decides, where one was said. */
export const levelCards: ReadonlySet<UrgentId> = new Set(
  Object.values(byLevel).flatMap((sides) => Object.values(sides)),
);

export function levelCard(id: ParameterId, side: Side): UrgentId | undefined {
  return byLevel[id]?.[side];
}
