import type { ChosenUnits } from '../../core/quantity/chosen-units.ts';
import type { RangeOf } from '../../core/water/assess.ts';
import { targetFor } from '../../core/water/targets.ts';
import type { ParameterId } from '../../core/water/parameter.ts';
import type { Tank } from '../keep.ts';
import { rangeWords } from '../tank/print.ts';

/** Where the readings of a tank should lie: its own targets, else those of its kind. */
export function rangesOf(tank: Tank): RangeOf {
  return (id) => tank.targets[id] ?? targetFor(tank.kind, id).range;
}

/** "your aim" where the tank has a target of its own, else "usual". */
export function rangeNamesOf(tank: Tank): (id: ParameterId) => string {
  return (id) => (tank.targets[id] === undefined ? 'usual' : 'your aim');
}

/** "usual 7 to 11 dKH", "usual none": where a reading should lie. */
export function aimWords(
  id: ParameterId,
  range: readonly [number, number],
  name: string,
  units: ChosenUnits,
): string {
  return `${name} ${range[1] === 0 ? 'none' : rangeWords(id, range, units)}`;
}
