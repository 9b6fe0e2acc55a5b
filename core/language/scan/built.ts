import type { NumberSpan } from './number-span.ts';
import { rateAt, rateBefore } from './rate.ts';
import { unitAt, type UnitKind } from './units.ts';

const ABOUT =
  /(?:~|≈|\b(?:about|around|roughly|approx\w*|maybe|like|well over|over|nearly|almost|some|say|bout|abt|circa|or so|under|just under|just over|close to|somewhere near))\s*(?:a |an |the )?$/;

/** A number of a text with what stands around it: its unit, a half behind that, how often, whether it is rough. */
export function built(
  text: string,
  start: number,
  end: number,
  number: string,
  value: number,
  form: NumberSpan['form'],
): NumberSpan {
  const found = unitAt(text, end) ?? (text.slice(end, end + 3) === 'ish' ? unitAt(text, end + 3) : undefined);
  // "5 gal 1.026 cups?" asks for the cups.
  const isGravity =
    gravityKinds(number, value).length > 0 && /^(?:cup|tsp|tbsp|gal)/.test(found?.symbol ?? '');
  const unit = isGravity ? undefined : found;
  const more = unit === undefined || unit.symbol === '' ? undefined : partBehind(text, unit.end);
  const wholeEnd = more?.end ?? unit?.end ?? end;
  const isTime = unit?.kinds.includes('days') === true;
  const everyDays = rateAt(text, wholeEnd) ?? (isTime ? undefined : rateBefore(text, start));
  const about = ABOUT.test(text.slice(Math.max(0, start - 16), start)) || text.startsWith('ish', end);
  return {
    start,
    end: wholeEnd,
    number: more === undefined ? number : String(value + more.value),
    value: value + (more?.value ?? 0),
    unit: unit === undefined || unit.kinds.every((kind) => NO_UNIT.has(kind)) ? '' : unit.symbol,
    kinds: unit?.kinds ?? gravityKinds(number, value),
    form,
    ...(about ? { about: true } : {}),
    ...(unit?.isHeaped === true ? { isHeaped: true } : {}),
    ...(everyDays === undefined ? {} : { everyDays }),
  };
}

/** "a litre and a half": the part behind the unit. */
function partBehind(
  text: string,
  start: number,
): { readonly value: number; readonly end: number } | undefined {
  const match = /^ and (?:a )?(half|quarter)\b/.exec(text.slice(start, start + 16));
  return match === null
    ? undefined
    : { value: match[1] === 'half' ? 0.5 : 0.25, end: start + match[0].length };
}

const NO_UNIT: ReadonlySet<UnitKind> = new Set([
  'gravity',
  'watts',
  'wattHours',
  'ampHours',
  'kelvin',
  'money',
  'heads',
  'times',
  'scoops',
  'flow',
  'others',
]);

/** "1.025" is a gravity whatever stands behind it. */
function gravityKinds(number: string, value: number): readonly UnitKind[] {
  return /^(?:1\.0|0?\.99)\d{1,3}$/.test(number) && value < 1.045 ? ['gravity', 'salinity'] : [];
}
