import { limitsOf } from './limits.ts';
import { parameter, type ParameterId } from './parameter.ts';
import { salinityPaceWords } from './salinity-pace.ts';

/** "at most 1 dKH a day", by direction: the pace of the table in the words every answer uses. */
export function paceWords(id: ParameterId): { readonly up: string; readonly down: string } {
  const { pace } = limitsOf(id);
  if (pace === undefined) return { up: 'slowly', down: 'slowly' };
  const { kind, unit } = parameter(id);
  const { up, down } = kind === 'salinity' ? salinityPaceWords : inUnit(pace.up, pace.down, unit);
  return { up: `at most ${up} a day`, down: `at most ${down} a day` };
}

function inUnit(up: number, down: number, unit: string) {
  return { up: `${up} ${unit}`, down: `${down} ${unit}` };
}
