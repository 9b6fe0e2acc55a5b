import { definitionOf } from './unit.ts';

/** Kinds whose amounts keepers write in one unit or another. */
export type AmountKind = 'volume' | 'length' | 'temperature' | 'mass' | 'alkalinity' | 'flow' | 'salinity';

/** A unit of our own texts, and what one of it is in the first unit of its kind. */
export interface AmountUnit {
  readonly kind: AmountKind;
  readonly symbol: string;
  readonly factor: number;
  readonly offset: number;
  /** The unit it is wanted by: feet by who wants inches; undefined where nobody chooses. */
  readonly by: string | undefined;
}

const WANTED_BY: Readonly<Record<string, string>> = {
  L: 'L',
  'm³': 'L',
  'L/h': 'L',
  'US gal': 'US gal',
  gph: 'US gal',
  'imp gal': 'imp gal',
  mm: 'cm',
  cm: 'cm',
  m: 'cm',
  in: 'in',
  ft: 'in',
  '°C': '°C',
  '°F': '°F',
  dKH: 'dKH',
  'meq/L': 'meq/L',
  'mmol/L': 'meq/L',
  'ppm CaCO3': 'ppm CaCO3',
};

const known = new Map<string, AmountUnit>();

function put(name: string, kind: AmountKind, symbol: string, factor: number, offset = 0): void {
  known.set(name, { kind, symbol, factor, offset, by: WANTED_BY[symbol] });
}

for (const kind of ['volume', 'length', 'temperature', 'mass', 'alkalinity'] as const)
  for (const { symbol, factor, offset } of definitionOf(kind).units)
    put(symbol, kind, symbol, factor, offset);
const GALLON_L = known.get('US gal')?.factor ?? Number.NaN;
put('gal', 'volume', 'US gal', GALLON_L);
put('L/h', 'flow', 'L/h', 1);
put('gph', 'flow', 'gph', GALLON_L);
// One of the two follows from the other by the equation of state (core/water) and not by a factor.
put('ppt', 'salinity', 'ppt', Number.NaN);
for (const name of ['SG', 'in specific gravity']) put(name, 'salinity', 'SG', Number.NaN);

/** The unit of a name in our texts. @throws Error for a name that `UNIT` does not match. */
export function amountUnit(name: string): AmountUnit {
  const unit = known.get(name);
  if (unit === undefined) throw new Error(`no unit ${name}`);
  return unit;
}

/** Sources of patterns: one number, several ("10 to 15", "120 x 50 x 50"), a unit that is not part of a longer one. */
const NUMBER = String.raw`(?:\d{1,3}(?:,\d{3})+|\d+(?:[.,]\d+)?)`;
export const NUMBERS = String.raw`${NUMBER}(?:(?: to | or | x |-|–)${NUMBER})*`;
export const UNIT = `(?:${[...known.keys()].sort((a, b) => b.length - a.length).join('|')})(?![\\w/²³·^])`;

/** An amount of one of our texts. */
export interface Amount {
  readonly values: readonly number[];
  readonly unit: AmountUnit;
  /** What a strength is told for, and no amount of its own: "per 100 L", "1 mL raises 100 L". */
  readonly isPer: boolean;
}

const OF_STRENGTH = /\b(?:per|raises?|for|every) $/;

const AMOUNT = new RegExp(String.raw`(?<![\w.,/°])(${NUMBERS}) (${UNIT})`, 'g');

/** Every amount of a text, in order. */
export function amountsIn(text: string): readonly Amount[] {
  return [...text.matchAll(AMOUNT)].map((match) => amountAt(text, match.index, match[1], match[2]));
}

function amountAt(text: string, at: number, numbers = '', name = ''): Amount {
  const unit = amountUnit(name);
  const isPer = unit.kind === 'volume' && OF_STRENGTH.test(text.slice(0, at));
  return { values: numbersOf(numbers), unit, isPer };
}

/** A text with its amounts written anew; `write` gets each as it stands there, its numbers, and where. */
export function withAmounts(
  text: string,
  write: (whole: string, numbers: string, amount: Amount, at: number) => string,
): string {
  return text.replace(AMOUNT, (whole: string, numbers: string, name: string, at: number) =>
    write(whole, numbers, amountAt(text, at, numbers, name), at),
  );
}

/** The numbers of "10 to 15" or "1,400 to 2,000"; a comma before other than three digits is a decimal mark. */
export function numbersOf(text: string): readonly number[] {
  return (text.match(new RegExp(NUMBER, 'g')) ?? []).map((each) =>
    Number(/,\d{3}/.test(each) ? each.replaceAll(',', '') : each.replace(',', '.')),
  );
}
