import type { ChosenUnits } from '../quantity/chosen-units.ts';
import { amountUnit } from '../quantity/amounts.ts';
import { definitionOf } from '../quantity/unit.ts';
import { fold } from './fold.ts';
import type { NumberSpan } from './scan/number-span.ts';
import { numbersIn } from './scan/numbers.ts';

type Kind = keyof ChosenUnits;

const CHOSEN: ReadonlySet<string> = new Set<Kind>(['volume', 'length', 'temperature', 'alkalinity']);

/** Named without a number before them: "how many litres is it", "in celsius please". */
const NAMED: readonly (readonly [Kind, string, RegExp])[] = [
  ['volume', 'L', /\blit(?:er|re)s?\b(?<!\ba lit(?:er|re))(?<!\bper lit(?:er|re))/],
  ['volume', 'US gal', /\b(?<!imp(?:erial)? |uk )(?:gals?|gallons?)\b/],
  ['length', 'cm', /\b(?:cm|centimet(?:er|re)s?)\b/],
  ['length', 'in', /\b(?:inch|inches|feet|ft)\b/],
  ['temperature', '°C', /\bcelsius\b/],
  ['temperature', '°F', /\bfahrenheit\b/],
];

/** What somebody's words tell of the units they think in: of each kind every unit they named. */
export interface TypedUnits {
  readonly named: Readonly<Record<Kind, ReadonlySet<string>>>;
  /** Numbers without a unit. */
  readonly bare: readonly number[];
}

export function typedUnits(given: string): TypedUnits {
  const text = fold(given);
  const spans = numbersIn(given);
  const ofNumbers = spans.flatMap((span) => unitsNamed(span));
  const isSaid = (kind: Kind, symbol: string): boolean =>
    ofNumbers.some(([one, unit]) => one === kind && unit.endsWith(symbol.slice(-3)));
  const ofWords = NAMED.filter(([kind, symbol, pattern]) => pattern.test(text) && !isSaid(kind, symbol)).map(
    ([kind, symbol]) => [kind, symbol] as const,
  );
  const of = (kind: Kind): ReadonlySet<string> =>
    new Set([...ofNumbers, ...ofWords].flatMap(([one, symbol]) => (one === kind ? [symbol] : [])));
  return {
    named: {
      volume: of('volume'),
      length: of('length'),
      temperature: of('temperature'),
      alkalinity: of('alkalinity'),
    },
    bare: spans.filter(({ unit }) => unit === '').map(({ value }) => value),
  };
}

/** The unit of a number, where it can be of one kind alone: "g" is grams or gallons. */
function unitsNamed({ unit, kinds }: NumberSpan): readonly (readonly [Kind, string])[] {
  const [kind] = kinds;
  if (kinds.length !== 1 || kind === undefined || !CHOSEN.has(kind)) return [];
  const of = kind as Kind;
  const name = unit.toLowerCase();
  const found = definitionOf(of).units.find(
    ({ symbol, names }) => symbol.toLowerCase() === name || names.includes(name),
  );
  // Panes are measured in mm in every country.
  const symbol = found === undefined || found.symbol === 'mm' ? undefined : amountUnit(found.symbol).by;
  return symbol === undefined ? [] : [[of, symbol]];
}

/** The one unit of a kind that was named; "several" where two were, and "none". */
export function namedOnly<K extends Kind>(
  { named }: TypedUnits,
  kind: K,
): NonNullable<ChosenUnits[K]> | 'several' | 'none' {
  const [one, more] = named[kind];
  if (more !== undefined) return 'several';
  return (one ?? 'none') as NonNullable<ChosenUnits[K]> | 'none';
}
