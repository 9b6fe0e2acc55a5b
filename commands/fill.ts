import { printed } from '../core/log/value.ts';
import { fixed, volume } from '../core/quantity/format.ts';
import { unmarked } from '../core/quantity/marks.ts';
import type { LoggableId } from '../core/water/loggable.ts';
import type { Keep, Reading, Tank } from './keep.ts';
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
  if (fill === 'salinity') {
    const last = lastOf('salinity', tank, keep);
    return last && found(last, `${unmarked(last.value)} ppt`, `${fixed(last.value, 1)} ppt`, tank);
  }
  if (fill === 'temperature') {
    const last = lastOf('temperature', tank, keep);
    return (
      last && found(last, `${unmarked(last.value)} °C`, printed('temperature', last.value, tank.units), tank)
    );
  }
  return undefined;
}

/** The net water as the text of an option. */
export function filledVolume({ netVolumeL }: Tank): string {
  return `${unmarked(netVolumeL)} L`;
}

function lastOf(id: LoggableId, tank: Tank, keep: Keep): Reading | undefined {
  return keep.latest(tank.id).find(({ parameter }) => parameter === id);
}

/** However old the reading is, its day is said. */
function found({ parameter, atMs }: Reading, value: string, shown: string, { name }: Tank): Found {
  const day = new Date(atMs).toISOString().slice(0, 10);
  return { value, read: `last ${parameter} logged for your tank ${name}: ${shown} on ${day}` };
}
