import { printed } from '../core/log/value.ts';
import { volume } from '../core/quantity/format.ts';
import { unmarked } from '../core/quantity/marks.ts';
import { parameter, type ParameterId } from '../core/water/parameter.ts';
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
  if (fill === undefined || fill === 'hours') return undefined;
  const last = lastOf(fill, tank, keep);
  if (last === undefined) return undefined;
  const value = `${unmarked(last.value)} ${parameter(fill).unit}`;
  return found(last, value, printed(fill, last.value, tank.units), tank);
}

/** The net water as the text of an option. */
export function filledVolume({ netVolumeL }: Tank): string {
  return `${unmarked(netVolumeL)} L`;
}

function lastOf(id: ParameterId, tank: Tank, keep: Keep): Reading | undefined {
  return keep.latest(tank.id).find((one) => one.parameter === id);
}

/** However old the reading is, its day is said. */
function found({ parameter: id, atMs }: Reading, value: string, shown: string, { name }: Tank): Found {
  const day = new Date(atMs).toISOString().slice(0, 10);
  return { value, read: `last ${id} logged for your tank ${name}: ${shown} on ${day}` };
}
