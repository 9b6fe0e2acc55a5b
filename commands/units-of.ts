import { firstChosen, unitsOfLocale, type ChosenUnits } from '../core/quantity/chosen-units.ts';
import type { Asking } from './command.ts';
import type { Tank } from './keep.ts';

/** The units somebody asks in, but for what they typed: the chosen ones, else those of their country. */
export function unitsOf(asking: Asking, tank?: Tank): ChosenUnits {
  return firstChosen(unitsChosen(asking, tank), unitsOfLocale(asking.locale));
}

/** The units that were chosen: the tank's (the one in use where none is given), else the asker's own, else the server's. */
export function unitsChosen(
  { keep, units, server }: Asking,
  tank: Tank | undefined = keep?.tankInUse(),
): ChosenUnits {
  return firstChosen(tank?.units, keep?.units() ?? units, server?.settings().units);
}
