import type { Said } from './said.ts';
import type { Scanned } from './tokens.ts';

/** A reading put right by what its instrument is known to be off. */
interface Offset {
  /** The gravity without the error. */
  readonly reading: string;
  /** The text of what it is off. */
  readonly from: string;
  readonly words: string;
}

/** Gravities between which the water of a tank is read; own choice. */
const GRAVITY = { above: 1, below: 1.04 } as const;
/** More than this an instrument is not off and used, specific gravity. Own choice. */
const MOST_OFF = 0.01;
const HIGH = new Set(['minus', 'subtract', 'less', 'high', 'over']);
const LOW = new Set(['plus', 'low', 'under', 'add']);

/**
 * "1.0242 minus its usual .0015", "1.024 but it shows .002 too high": the gravity without the error. Undefined where no
 * error, or not its side, is said. Check: 1.0242, .0015 high -> 1.0227.
 */
export function readingOff({ tokens }: Scanned, said: readonly Said[]): Offset | undefined {
  const read = said.find(({ number }) => number.value > GRAVITY.above && number.value < GRAVITY.below);
  const off = said.find(({ number }) => number.unit === '' && number.value > 0 && number.value < MOST_OFF);
  if (read === undefined || off === undefined) return undefined;
  const [isHigh, isLow] = [HIGH, LOW].map((words) => tokens.some(({ word }) => words.has(word)));
  if (isHigh === isLow) return undefined;
  const { value } = off.number;
  const right = (read.number.value + (isHigh === true ? -value : value)).toFixed(4);
  const side = isHigh === true ? 'high' : 'low';
  return {
    reading: `${right} sg`,
    from: off.text,
    words: `${read.text} shown, ${off.text} too ${side}: ${right}`,
  };
}

/** Sea water holds some 3.5 %; other shares are of something else. Own choice. */
const PERCENT = { min: 0.5, max: 4.2 } as const;

/** "3.4 %" of salt, or a bare 3.4 beside the word, in ppt: ten times as many; undefined where a gravity or ppt is said. */
export function percentOfSalt({ tokens }: Scanned, said: readonly Said[]): string | undefined {
  const isElse = said.some(
    ({ number }) => number.kinds.includes('salinity') || number.kinds.includes('conductivity'),
  );
  const isPercent = said.some(({ number }) => number.kinds.includes('share'));
  const isSaid = isPercent || tokens.some(({ word }) => word === '%' || word === 'percent');
  const one = said.find(({ number: { value } }) => value >= PERCENT.min && value <= PERCENT.max);
  return isElse || !isSaid || one === undefined
    ? undefined
    : `${Number((one.number.value * 10).toFixed(2))} ppt`;
}
