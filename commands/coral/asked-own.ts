import { clean } from '../../core/quantity/clean.ts';
import type { OwnContext } from '../command.ts';
import type { Keep, Tank } from '../keep.ts';
import type { Placing } from '../placed.ts';
import { nameOf } from './asked-placed.ts';

/** One of the asker's own corals, with the tank it stands in. */
export interface Own {
  readonly keep: Keep;
  readonly tank: Tank;
  readonly placing: Placing;
}

/** The coral of the tank in use that a number ("3", "3: Torch coral") or its whole label means; any other is a kind. */
export function askedOwn({ keep }: OwnContext, given: string): Own | undefined {
  const tank = keep?.tankInUse();
  if (keep === undefined || tank === undefined) return undefined;
  const id = /^#?(\d{1,15})(?::.*)?$/s.exec(given.trim())?.[1];
  const wanted = clean(given);
  const fitting = keep
    .corals(tank.id)
    .filter((one) => (id === undefined ? clean(nameOf(one)) === wanted : one.id === Number(id)));
  const [placing] = fitting;
  return placing === undefined || fitting.length > 1 ? undefined : { keep, tank, placing };
}
