import { known, type Case } from './case.ts';
import type { Frame } from './frame.ts';
import { met } from './met.ts';
import { isWithin } from './within.ts';

const NUMBER = /^[\d.,]+/;
const GALLONS = /^gal/;
const LITRES = /^(?:l$|lit|ltr)/;
/** A number within this factor of the volume told before can be the same water, put right; own choice. */
const FACTOR = 2.5;

/**
 * A volume put right in parts: "gallons I mean" gives a bare one its unit, "well 120 actually" is the volume told before
 * with another number. A frame that has a volume of its own is left alone.
 */
export function withVolumeRight(frame: Frame, before: Case): Frame {
  const { slots, reading } = frame;
  const told = known(before).volume;
  if (told === undefined || slots.volume !== undefined) return frame;
  const number = NUMBER.exec(told)?.[0] ?? '';
  const unit = told.slice(number.length).trim();
  const volume =
    unit === ''
      ? unitLater(
          number,
          reading.scanned.tokens.map(({ word }) => word),
        )
      : anew(frame, number, unit);
  return volume === undefined ? frame : { ...frame, slots: { ...slots, volume } };
}

/** The unit of a bare volume, said on its own. */
function unitLater(number: string, words: readonly string[]): string | undefined {
  if (words.some((word) => GALLONS.test(word))) return `${number} gal`;
  return words.some((word) => LITRES.test(word)) ? `${number} l` : undefined;
}

/** The only number of a correction that names nothing else. */
function anew({ slots, reading }: Frame, number: string, unit: string): string | undefined {
  const [only, more] = slots.counts ?? [];
  const isOther = slots.levels !== undefined || slots.of !== undefined || slots.amount !== undefined;
  if (only === undefined || more !== undefined || isOther || !met(reading.scanned, 'manner.correction'))
    return undefined;
  return isWithin(FACTOR, only, Number(number)) ? `${only} ${unit}` : undefined;
}
