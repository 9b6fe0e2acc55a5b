import { readQuantity } from '../quantity/read.ts';
import { isShare } from './kinds-of-said.ts';
import type { Said } from './said.ts';
import { rateAt } from './scan/rate.ts';
import type { NumberSpan } from './scan/number-span.ts';
import { placeOf, type Scanned } from './tokens.ts';
import { isCount, vesselsBefore } from './vessels.ts';

/** Water that is changed: what each change takes, in order, how often, and the numbers it was put together from. */
interface ChangedWater {
  readonly shares: readonly string[];
  /** Volumes; buckets of one change are one volume. */
  readonly volumes: readonly string[];
  readonly everyDays: number | undefined;
  readonly from: readonly Said[];
}

/**
 * Reads the changes of a message. "half", "2/3" are shares; a bare number takes the unit of the changes or of the system
 * beside it; "two buckets of 10 L" are 20 L; "3 changes a month" are one every ten days.
 */
export function changedWater(
  scanned: Scanned,
  said: readonly Said[],
  system: string | undefined,
): ChangedWater {
  const all = said.filter((one) => one.part === 'changed' && !isVesselCount(one, scanned, said));
  const shares: string[] = [];
  const volumes: string[] = [];
  for (const one of all) {
    const share = shareOf(one, all, system);
    if (share !== undefined) shares.push(share);
    else if (isVolume(one)) volumes.push(volumeOf(one, scanned, said, unitFor(one, all, system)));
  }
  return {
    shares,
    volumes,
    everyDays: all.length === 0 ? undefined : everyOf(scanned, said, all),
    from: said.filter(
      (one) =>
        (all.includes(one) && (isShare(one) || isVolume(one))) ||
        (all.length > 0 && isOften(one)) ||
        isVesselCount(one, scanned, said),
    ),
  };
}

function isVolume({ number: { kinds } }: Said): boolean {
  return kinds.length === 0 || kinds.includes('volume');
}

function isBare({ number: { kinds } }: Said): boolean {
  return kinds.length === 0;
}

/** A share as text; a bare number is one below 1, where it is said to be one, or beside shares and no volume. */
function shareOf(one: Said, all: readonly Said[], system: string | undefined): string | undefined {
  if (isShare(one)) return one.text;
  const { value } = one.number;
  if (!isBare(one) || value <= 0) return undefined;
  if (value < 1) return `${Number((value * 100).toFixed(2))} %`;
  const isBesideShares =
    system === undefined && all.some(isShare) && !all.some(({ number }) => number.kinds.includes('volume'));
  return value <= 100 && (one.of === 'share' || isBesideShares) ? `${one.number.number} %` : undefined;
}

/** Of a number without one: that of another change, else that of the system. */
function unitFor(one: Said, all: readonly Said[], system: string | undefined): string {
  if (!isBare(one)) return one.number.unit;
  const other = all.find(({ number }) => number.kinds.includes('volume'));
  return other?.number.unit ?? /[a-z][a-z ]*/i.exec(system ?? '')?.[0].trim() ?? '';
}

function volumeOf(one: Said, scanned: Scanned, said: readonly Said[], unit: string): string {
  const times = vesselsBefore(one, scanned, said) ?? 1;
  return `${Number((one.number.value * times).toFixed(4))} ${unit}`.trim();
}

/** "2 buckets of 10 litres": the first of the two only counts. */
function isVesselCount(one: Said, scanned: Scanned, said: readonly Said[]): boolean {
  const next = said[said.indexOf(one) + 1];
  if (next?.part !== 'changed' || !isVolume(next) || !isCount({ ...one, part: 'none' })) return false;
  return vesselsBefore(next, scanned, said) !== undefined;
}

/** "twice a week": how often, and no count of its own. */
function isOften(one: Said): boolean {
  return one.part === 'none' && isCount(one) && one.number.everyDays !== undefined;
}

/** How often: said behind a change, as so many in a time, as a span behind "every", or anywhere as "every other Sunday". */
function everyOf(scanned: Scanned, said: readonly Said[], all: readonly Said[]): number | undefined {
  const own = all.find(({ number }) => number.everyDays !== undefined)?.number.everyDays;
  if (own !== undefined) return own;
  const counted = said.find((one) => isCount(one) && one.number.everyDays !== undefined)?.number;
  if (counted?.everyDays !== undefined) return counted.everyDays / counted.value;
  const span = said.find(
    ({ part, number }) => part === 'span' && number.kinds.includes('days') && isEach(scanned, number),
  );
  if (span !== undefined) return readQuantity('days', span.text, { field: 'every' }).value;
  return scanned.tokens.flatMap(({ word, start }) => {
    if (!EACH.has(word) || isOfRate(said, start)) return [];
    return rateAt(scanned.text, start) ?? [];
  })[0];
}

const EACH: ReadonlySet<string> = new Set(
  'every each weekly monthly daily fortnightly biweekly nightly'.split(' '),
);

function isEach({ tokens }: Scanned, number: NumberSpan): boolean {
  const before = tokens[placeOf(tokens, number) - 1];
  return before?.word === 'every' || before?.word === 'each';
}

/** Letters a time may stand behind the rate it belongs to. Own choice. */
const NEAR_RATE = 16;

/** Whether a time is how often something else comes: "2 a week", "12 ml of it daily". */
function isOfRate(said: readonly Said[], start: number): boolean {
  return said.some(
    ({ part, number }) =>
      (part === 'rate' || part === 'amount' || part === 'change') &&
      number.end <= start &&
      start - number.end < NEAR_RATE,
  );
}
