import {
  MOST_NAME_LETTERS,
  type SalinityInstrument,
  type Tank,
  type TankProfile,
} from '../../commands/keep.ts';
import { inRange, Problem } from '../../core/problem.ts';
import { quantities } from '../../core/quantity/unit.ts';
import type { TankKind } from '../../core/water/targets.ts';
import { say } from '../../core/wording/say.ts';
import { isoDate, MOST_BASIS_LETTERS, shortEnough, zoneName } from './limits.ts';

export interface TankRow {
  readonly name: string;
  readonly kind: string;
  readonly netVolumeL: number;
  readonly displayVolumeL: number | null;
  readonly volumeBasis: string;
  readonly startedOn: string | null;
  readonly instrument: string | null;
  readonly lightHours: number | null;
  readonly zone: string | null;
  readonly units: string;
  readonly targets: string;
}

const { min: leastL, max: mostL } = quantities.volume;

/** @throws Problem when a text is too long or a number outside sense. */
export function rowOf(profile: TankProfile): TankRow {
  const name = shortEnough('name', profile.name.trim(), MOST_NAME_LETTERS);
  if (name === '') throw new Problem(say('tank.needsName'), { field: 'name', given: profile.name });
  const { displayVolumeL, startedOn, lightHours, zone } = profile;
  return {
    name,
    kind: profile.kind,
    netVolumeL: inRange('volume', profile.netVolumeL, leastL, mostL, 'L'),
    displayVolumeL:
      displayVolumeL === undefined ? null : inRange('display volume', displayVolumeL, leastL, mostL, 'L'),
    volumeBasis: shortEnough('volume', profile.volumeBasis, MOST_BASIS_LETTERS),
    startedOn: startedOn === undefined ? null : isoDate('started', startedOn),
    instrument: profile.instrument ?? null,
    lightHours: lightHours === undefined ? null : inRange('light', lightHours, 0, 24, 'hours a day'),
    zone: zone === undefined ? null : zoneName(zone),
    units: JSON.stringify(profile.units),
    targets: JSON.stringify(profile.targets),
  };
}

export function tankOf(row: TankRow & { readonly id: number }): Tank {
  return {
    ...row,
    kind: row.kind as TankKind,
    displayVolumeL: row.displayVolumeL ?? undefined,
    startedOn: row.startedOn ?? undefined,
    instrument: (row.instrument ?? undefined) as SalinityInstrument | undefined,
    lightHours: row.lightHours ?? undefined,
    zone: row.zone ?? undefined,
    units: JSON.parse(row.units) as TankProfile['units'],
    targets: JSON.parse(row.targets) as TankProfile['targets'],
  };
}
