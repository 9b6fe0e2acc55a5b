import { readSalinity } from '../../core/water/salinity-reading.ts';
import { remarkOn } from '../salinity/print.ts';

/** A salinity said beside a dose: how it was read, and the remark that comes first where it is out of bounds. */
export interface AskedSalinity {
  readonly read: readonly string[];
  readonly remark: string | undefined;
  /** What a reading of an ion is multiplied by to be as at salinity 35; 1 where salinity is usual or not known. */
  readonly factor: number;
}

/** @throws Problem when the text is no salinity. */
export function askedSalinity(text: string | undefined): AskedSalinity {
  if (text === undefined) return { read: [], remark: undefined, factor: 1 };
  const reading = readSalinity(text, { field: 'salinity' });
  const remark = remarkOn(reading);
  return { read: reading.notes, remark, factor: remark === undefined ? 1 : 35 / reading.practicalSalinity };
}
