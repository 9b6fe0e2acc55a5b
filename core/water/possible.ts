import { Problem } from '../problem.ts';
import { fixed } from '../quantity/format.ts';
import { say } from '../wording/say.ts';
import { parameter, type ParameterId } from './parameter.ts';
import { limitsOf } from './limits.ts';

/**
 * More than so many times the highest believable reading is no water of a tank at all: more for waste, which can be
 * none and then a great deal, than for what sea water always holds. Own choice.
 */
const TIMES = { waste: 10, always: 3 } as const;

/** The most that can be in a tank's water, in the parameter's own unit: alkalinity 48 dKH, nitrate 2000 mg/L. */
export function mostPossible(id: ParameterId): number {
  const [low, high] = limitsOf(id).believable;
  return high * (low > 0 ? TIMES.always : TIMES.waste);
}

/**
 * A level, or a change of one, in the parameter's own unit, that a tank's water can have; returns it.
 *
 * @throws Problem for one no tank can have: a slip of the decimal mark or of the unit.
 */
export function possible(id: ParameterId, field: string, value: number): number {
  const most = mostPossible(id);
  if (Number.isFinite(value) && Math.abs(value) <= most) return value;
  const { label, unit, decimals } = parameter(id);
  throw new Problem(say('water.noTankHolds', { parameter: label }), {
    field,
    given: `${fixed(value, decimals)} ${unit}`.trim(),
    limit: say('convert.atMost', { most: `${fixed(most, decimals)} ${unit}`.trim() }),
  });
}
