import { met } from './met.ts';
import type { Said } from './said.ts';
import { placeOf, type Scanned, type Token } from './tokens.ts';

/** Most words between how many buckets there are and what each holds. Own choice. */
const MOST_BETWEEN = 4;
/** More buckets than these are no change. Own choice. */
const MOST_VESSELS = 50;

/** How many vessels of that size are emptied at a time: "3 buckets, 12 litres each", "two five gallon buckets". */
export function vesselsBefore({ number }: Said, scanned: Scanned, said: readonly Said[]): number | undefined {
  const at = placeOf(scanned.tokens, number);
  const before = scanned.tokens.slice(0, at);
  const from = before.findLastIndex((token) => token.number !== undefined);
  const count = said.find((one) => one.number.start === before[from]?.start);
  if (count === undefined || at - from - 1 > MOST_BETWEEN || !isCount(count)) return undefined;
  const behind = scanned.tokens.filter((token) => token.start >= number.end).slice(0, 1);
  const isVessel = holdsVessel(scanned, [...before.slice(from + 1), ...behind]);
  return isVessel && count.number.everyDays === undefined ? count.number.value : undefined;
}

/** The text of one, times the vessels it fills: "five 5 gallon buckets" -> "25 gallon", "2 bags of 4 kg" -> "8 kg". */
export function inVessels(text: string, scanned: Scanned, said: readonly Said[]): string {
  const one = said.find((each) => each.text === text);
  const times = one === undefined ? undefined : vesselsBefore(one, scanned, said);
  return one === undefined || times === undefined
    ? text
    : `${Number((one.number.value * times).toFixed(4))} ${one.number.unit}`.trim();
}

/** A whole number of things that no other part took. */
export function isCount({ part, number: { kinds, value } }: Said): boolean {
  const isPlain = kinds.length === 0 || kinds.includes('times');
  const isFew = Number.isInteger(value) && value > 0 && value <= MOST_VESSELS;
  return (part === 'none' || part === 'changed') && isPlain && isFew;
}

function holdsVessel(scanned: Scanned, tokens: readonly Token[]): boolean {
  return met(
    { ...scanned, tokens },
    'hardware.bucket',
    'hardware.jug',
    'hardware.bin',
    'hardware.barrel',
    'hardware.bag',
  );
}
