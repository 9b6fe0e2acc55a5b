import { amountsIn, amountUnit, withAmounts, type AmountUnit } from './amounts.ts';
import type { ChosenUnits } from './chosen-units.ts';
import { fixed } from './format.ts';
import { oneUnit } from './one-unit.ts';

/** Temperatures that name a scale, as they stand on instruments and standards. */
const OF_A_SCALE = /mS\/cm|\bconductivity|\bdensity|\bscales?\b|specific gravity|\d °C \/ \d|\bSG\b/;

/** A difference of temperatures: "by 1.3 °C", "1 °C an hour", and whatever no reef is as cold as (project rule). */
const BY = /\b(?:by|another|by about|swings of) $/;
const APART =
  /^ (?:an? (?:hour|day|night)|apart|warmer|cooler|colder|higher|lower|above|below|off|more|less|of)\b/;
const SURE_DIFFERENCE_C = 6;
/** More is a temperature, whatever stands beside it: nothing here is told to warm or cool by as much. Project rule. */
const MOST_DIFFERENCE_C = 15;

/**
 * A text of ours with its amounts in the units somebody wants. Doubles lose one (`oneUnit`); amounts in litres, cm, m, °C
 * and dKH are converted where gallons, inches, °F or another unit of alkalinity are wanted, exactly and then rounded for
 * people: lengths by at most 2 % or 0.05 in, volumes by at most 1 % (below 10 gal 0.005 gal where that is more). Less
 * than a gallon stays in litres and millilitres, as solutions are mixed; so does what a strength is told for ("per
 * 100 L"). A line that tells one amount in both units ("25 °C is 77 °F") was asked for that and stays.
 */
export function inUnits(text: string, chosen: ChosenUnits): string {
  const once = oneUnit(text, chosen);
  const targets = targetsOf(OF_A_SCALE.test(once) ? { ...chosen, temperature: undefined } : chosen);
  if (targets.size === 0 || tellsBoth(once, targets)) return once;
  return withAmounts(once, (whole, numbers, { unit, values: given, isPer }, at) => {
    const target = targets.get(unit.symbol);
    const [before, after] = [once.slice(0, at), once.slice(at + whole.length)];
    if (target === undefined || isPer) return whole;
    const isDifference =
      unit.kind === 'temperature' &&
      given.every((value) =>
        isUpTo(value, BY.test(before) || APART.test(after) ? MOST_DIFFERENCE_C : SURE_DIFFERENCE_C),
      );
    const values = given.map((value) => converted(value, unit, target, isDifference));
    if (unit.kind === 'volume' && values.some((value) => value < 1)) return whole;
    const isWhole = !/\d\.\d/.test(numbers);
    let next = 0;
    const shown = numbers.replace(/\d[\d,]*(?:\.\d+)?/g, () =>
      rounded(values[next++] ?? Number.NaN, target, isWhole && !isDifference),
    );
    // "16 in in a tank"
    return `${shown} ${target.symbol === 'in' && after.startsWith(' in ') ? 'inches' : target.symbol}`;
  });
}

/** What metric amounts become, by their symbol. */
function targetsOf({
  volume,
  length,
  temperature,
  alkalinity,
}: ChosenUnits): ReadonlyMap<string, AmountUnit> {
  const pairs: [string, string][] = [];
  if (volume !== undefined && volume !== 'L') pairs.push(['L', volume]);
  if (length === 'in') pairs.push(['cm', 'in'], ['m', 'ft']);
  if (temperature === '°F') pairs.push(['°C', '°F']);
  if (alkalinity !== undefined && alkalinity !== 'dKH') pairs.push(['dKH', alkalinity]);
  return new Map(pairs.map(([from, to]) => [from, amountUnit(to)]));
}

function converted(value: number, from: AmountUnit, to: AmountUnit, isDifference: boolean): number {
  const [add, take] = isDifference ? [0, 0] : [from.offset, to.offset];
  return (value * from.factor + add - take) / to.factor;
}

/** 0 °C is ice. */
function isUpTo(value: number, most: number): boolean {
  return value > 0 && value <= most;
}

/** Of the example "75 gal or 280 L": project rule. */
const ALIKE = 0.03;

/** Whether the text has an amount that is wanted beside the same one in metric units. */
function tellsBoth(text: string, targets: ReadonlyMap<string, AmountUnit>): boolean {
  const all = amountsIn(text);
  return all.some(({ values, unit }) => {
    const target = targets.get(unit.symbol);
    if (target === undefined) return false;
    const wanted = values.map((value) => converted(value, unit, target, false));
    return all
      .filter((other) => other.unit.symbol === target.symbol)
      .some((other) =>
        other.values.some((one) => wanted.some((each) => Math.abs(each - one) <= ALIKE * one)),
      );
  });
}

/** `isWhole`: a temperature that was told in whole degrees. */
function rounded(value: number, { kind, symbol }: AmountUnit, isWhole: boolean): string {
  if (kind === 'temperature') return fixed(value, isWhole || isNearlyWhole(value) ? 0 : 1);
  if (kind === 'alkalinity') return fixed(value, symbol === 'meq/L' ? 2 : value < 20 ? 1 : 0);
  if (kind === 'volume')
    return near(value, [1], 0.01) ?? fixed(value, value >= 100 ? 0 : value >= 10 ? 1 : 2);
  return near(value, symbol === 'ft' ? [1] : [1, 2], 0.02) ?? fixed(value, value < 0.3 ? 2 : 1);
}

/** "78 °F" is kept as 25.6 °C, and that is 78.08 °F. */
function isNearlyWhole(value: number): boolean {
  return value > 20 && Math.abs(Math.round(value) - value) <= 0.1;
}

/** The value in whole parts, or else in halves, where that is off by no more than `share`. */
function near(value: number, parts: readonly number[], share: number): string | undefined {
  const found = parts
    .map((part) => Math.round(value * part) / part)
    .find((one) => one >= 1 && Math.abs(one - value) <= share * value);
  return found === undefined ? undefined : fixed(found, 1);
}
