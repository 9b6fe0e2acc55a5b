import { printed } from '../core/log/value.ts';
import { volume } from '../core/quantity/format.ts';
import { unmarked } from '../core/quantity/marks.ts';
import { parameter } from '../core/water/parameter.ts';
import type { Keep, LoggedValue, Reading, Tank } from './keep.ts';
import type { Fill } from './options.ts';

/** A value for an option, and the sentence that says where it is from. */
export interface Found {
  readonly value: string;
  readonly read: string;
}

/** What the tank in use says for an option that was left out; undefined where it says nothing. */
export function leftOut(fill: Fill | undefined, tank: Tank, keep: Keep): Found | undefined {
  if (fill === 'volume') {
    return {
      value: filledVolume(tank),
      read: `net water of your tank ${tank.name}: ${volume(tank.netVolumeL)}`,
    };
  }
  if (fill === 'hours' && tank.lightHours !== undefined) {
    return {
      value: `${unmarked(tank.lightHours)} h`,
      read: `light hours of your tank ${tank.name}: ${tank.lightHours} h`,
    };
  }
  if (fill === undefined || fill === 'hours') return undefined;
  const last = keep.latest(tank.id).find((one) => one.parameter === fill);
  return last === undefined ? undefined : { value: loggedText(last), read: loggedLine(last, tank) };
}

/** The net water as the text of an option. */
export function filledVolume({ netVolumeL }: Tank): string {
  return `${unmarked(netVolumeL)} L`;
}

/** A reading as the text of an option. */
export function loggedText({ parameter: id, value }: LoggedValue): string {
  return `${unmarked(value)} ${parameter(id).unit}`.trim();
}

/** Says where a value is from; however old the reading is, its day is said. */
export function loggedLine(reading: Reading, tank: Tank): string {
  return `last ${reading.parameter} logged for your tank ${tank.name}: ${loggedWords(reading, tank)}`;
}

/** "8.3 dKH on 2026-03-10". */
export function loggedWords({ parameter: id, value, atMs }: Reading, { units }: Tank): string {
  return `${printed(id, value, units)} on ${loggedDay(atMs)}`;
}

/** ISO date of a reading. */
export function loggedDay(atMs: number): string {
  return new Date(atMs).toISOString().slice(0, 10);
}
