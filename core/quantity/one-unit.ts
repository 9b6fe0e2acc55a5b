import { amountUnit, numbersOf, NUMBERS, UNIT, type AmountUnit } from './amounts.ts';
import type { ChosenUnits } from './chosen-units.ts';

/** Each rounded for people, one amount in two units differs by no more than this share of itself: 4 cm is 1.5 in. */
const ROUNDED = 0.06;
/** The same of each end of a span (10 to 20 L is 2 to 5 gal), of one for both ends (1 to 2 cm is 0.6 in), of differences. */
const ENDS = 0.25;
const ONE_FOR_BOTH = 0.35;
const DIFFERENCES = 0.12;

/** "75 US gal (283.9 L)", "10 to 15 cm (4 to 6 in)", "25 °C (77 °F)", "35 ppt (1.0264 SG)". */
const TWICE = new RegExp(String.raw`(${NUMBERS}) (${UNIT}) \((?:about |some )?(${NUMBERS}) (${UNIT})\)`, 'g');

/**
 * A text in which no amount stands in two units: what is in brackets behind it goes where it is the same amount again, as
 * both show. The one in the unit somebody wants stays; where none is chosen the shorter, for that is the one somebody
 * wrote ("4 in", of "10.2 cm (4 in)"), and of two as long the first.
 */
export function oneUnit(text: string, chosen: ChosenUnits = {}): string {
  if (!text.includes('(')) return text;
  return text.replace(TWICE, (whole: string, one: string, unit: string, other: string, second: string) => {
    const [first, again] = [amountUnit(unit), amountUnit(second)];
    if (!isSame(numbersOf(one), first, numbersOf(other), again)) return whole;
    const wanted = wantedOf(first, chosen);
    const isSecond = wanted === undefined ? other.length < one.length : again.by === wanted;
    return isSecond ? `${other} ${second}` : `${one} ${unit}`;
  });
}

/** Flow goes with volume. */
function wantedOf({ kind }: AmountUnit, chosen: ChosenUnits): string | undefined {
  if (kind === 'flow') return chosen.volume;
  return kind === 'mass' || kind === 'salinity' ? undefined : chosen[kind];
}

function isSame(
  ones: readonly number[],
  unit: AmountUnit,
  others: readonly number[],
  second: AmountUnit,
): boolean {
  if (unit.kind !== second.kind || unit.symbol === second.symbol) return false;
  if (unit.kind === 'salinity') return true;
  const ends = [
    [ones.at(0), others.at(0)],
    [ones.at(-1), others.at(-1)],
  ].map(([one, other]) => [one ?? Number.NaN, other ?? Number.NaN] as const);
  return ends.every(([one, other]) => {
    const isAlike = (offset: 0 | 1, share: number): boolean => {
      const [a, b] = [
        one * unit.factor + offset * unit.offset,
        other * second.factor + offset * second.offset,
      ];
      return Math.abs(a - b) <= share * Math.max(Math.abs(a), Math.abs(b));
    };
    if (unit.kind === 'temperature') return isAlike(1, ROUNDED) || isAlike(0, DIFFERENCES);
    if (ones.length !== others.length) return isAlike(0, ONE_FOR_BOTH);
    return isAlike(0, ones.length === 1 ? ROUNDED : ENDS);
  });
}
