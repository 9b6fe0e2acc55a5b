import { readSalinity } from '../../core/water/salinity-reading.ts';
import { remarkOn } from '../salinity/print.ts';

/** A salinity said beside a dose: how it was read, and the remark that comes first where it is out of bounds. */
export interface AskedSalinity {
  readonly read: readonly string[];
  readonly remark: string | undefined;
}

/** @throws Problem when the text is no salinity. */
export function askedSalinity(text: string | undefined): AskedSalinity {
  if (text === undefined) return { read: [], remark: undefined };
  const reading = readSalinity(text, { field: 'salinity' });
  return { read: reading.notes, remark: remarkOn(reading) };
}
