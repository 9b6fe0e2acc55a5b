import { targetFor } from '../../core/water/targets.ts';
import type { Fact, Table } from '../answer.ts';
import type { TankProfile } from '../keep.ts';
import { unitFacts } from '../unit-facts.ts';
import { ageWords, kindWords, litres, targetsOf } from './print.ts';

export const PRACTICE_TARGETS =
  'The usual targets are common practice; keepers differ, and steady values count for more than exact ones.';

/** Net water and display, always side by side. */
export function waterFacts({ netVolumeL, displayVolumeL, units }: TankProfile): readonly Fact[] {
  const display = displayVolumeL === undefined ? 'not known' : `${litres(displayVolumeL, units)} to the rim`;
  return [
    { label: 'net water', value: litres(netVolumeL, units) },
    { label: 'display', value: display },
  ];
}

/** Kind, age and habits, each only where it is known. */
export function detailFacts(profile: TankProfile, nowMs: number): readonly Fact[] {
  const { kind, startedOn, instrument, lightHours, units, zone } = profile;
  const chosen = unitFacts(units).map(({ value }) => value);
  return [
    { label: 'kind', value: kindWords[kind] },
    ...(startedOn === undefined ? [] : [ageFact(startedOn, nowMs)]),
    ...(instrument === undefined ? [] : [{ label: 'salinity measured with', value: instrument }]),
    ...(lightHours === undefined ? [] : [{ label: 'full light', value: `${lightHours} h a day` }]),
    ...(zone === undefined ? [] : [{ label: 'time zone of the tank', value: zone }]),
    ...(chosen.length === 0 ? [] : [{ label: 'units of its own', value: chosen.join(', ') }]),
  ];
}

export function ageFact(startedOn: string, nowMs: number): Fact {
  return { label: 'running', value: `${ageWords(startedOn, nowMs)}, since ${startedOn}` };
}

/** Every target with whose it is. */
export function targetTable(profile: TankProfile): Table {
  const rows = targetsOf(profile).map(({ label, range, own }) => [label, range, own ? 'own' : 'usual']);
  return { head: ['reading', 'target', 'whose'], rows };
}

/** Why the usual targets are what they are. */
export function targetReason({ kind }: TankProfile): string {
  return `usual targets for ${kindWords[kind]}, common practice: ${targetFor(kind, 'alkalinity').reason}`;
}
