import { Problem } from '../../core/problem.ts';
import { clean } from '../../core/quantity/clean.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { MOST_NAME_LETTERS, type Keep, type TankProfile } from '../keep.ts';
import { askedStarted } from './asked-started.ts';
import { tankNamed } from './asked-tank.ts';
import { readZone } from '../zone.ts';
import { askedTargets } from './asked-targets.ts';
import { withUnits } from '../unit-options.ts';
import type { ProfileInput } from './options.ts';
import { say } from '../../core/wording/say.ts';

/** Everything of a profile but its name and water. */
export type Details = Omit<TankProfile, 'name' | 'netVolumeL' | 'displayVolumeL' | 'volumeBasis'>;

export const noDetails: Details = { kind: 'mixed', units: {}, targets: {} };

/** The details with what the options change, and how targets were read. @throws Problem for what cannot be read. */
export function askedDetails(
  input: ProfileInput,
  before: Details,
  nowMs: number,
): { readonly details: Details; readonly read: readonly string[] } {
  const units = withUnits(before.units, { ...input, volume: input.units });
  const { targets, read } =
    input.targets === undefined
      ? { targets: before.targets, read: [] }
      : askedTargets(input.targets, before.targets, units);
  const hours =
    input.hours === undefined ? undefined : readQuantity('hours', input.hours, { field: 'hours' });
  const details = {
    kind: input.kind ?? before.kind,
    startedOn: input.started === undefined ? before.startedOn : askedStarted(input.started, nowMs),
    instrument: input.instrument ?? before.instrument,
    lightHours: hours?.value ?? before.lightHours,
    zone: input.zone === undefined ? before.zone : askedTankZone(input.zone, nowMs),
    units,
    targets,
  };
  return { details, read };
}

/** "mine" takes the tank's own zone back. */
function askedTankZone(given: string, nowMs: number): string | undefined {
  return /^(?:mine|own|default|none)$/i.test(given) ? undefined : readZone(given, { nowMs });
}

/**
 * A name no other tank of the member has; `ownId` is the tank being renamed.
 *
 * @throws Problem when it is taken, or nothing one can read.
 */
export function askedName(keep: Keep, text: string, ownId?: number): string {
  const name = text.replaceAll(/[\p{C}\s]+/gu, ' ').trim();
  if (name === '' || name.length > MOST_NAME_LETTERS || !/[\p{L}\p{N}]/u.test(clean(name))) {
    throw new Problem(say('tank.tankNeedsNameLetters'), {
      field: 'name',
      given: text,
      limit: say('tank.limitName', { MOSTNAMELETTERS: MOST_NAME_LETTERS }),
    });
  }
  const other = tankNamed(keep, name);
  if (other === undefined || other.id === ownId) return name;
  throw new Problem(say('tank.alreadyCalled', { name: other.name }), {
    field: 'name',
    given: text,
    hint: say('tank.giveOneAnotherName'),
  });
}
