/** A plan of days as an answer prints it: portions in order, in the unit printed first. */
export interface PrintedPlan {
  readonly portions: readonly number[];
  /** One unit of the last digit printed, in the same unit. */
  readonly digit: number;
}

/** Grams, millilitres or litres in one text: "3.2 g", "8.6 mg", "1.23 kg", "250 mL". */
const SIZE: Readonly<Record<string, number>> = { g: 1, mg: 0.001, kg: 1000, mL: 0.001, L: 1 };
const AMOUNT = String.raw`(\d+(?:\.\d+)?) (mg|kg|g|mL|L)`;

/** A first line without the sentences on an unusual level before it. */
export function afterGuard(headline: string): string {
  return headline.replace(/^(?:.*? is usual\. )?(?:.*? the usual [a-z]+ \([^)]*\)\. )?/, '');
}

/** The first amount of a text, in g or L. */
export function amountIn(text: string): number {
  const found = new RegExp(AMOUNT).exec(text);
  if (found === null) throw new Error(`no amount in ${text}`);
  return Number(found[1]) * (SIZE[found[2] ?? ''] ?? Number.NaN);
}

/** Reads "3.4 g a day for 2 days, then 3.2 g on day 3", "3.3 g on day 1 and 3.2 g on day 2", or one day's amount. */
export function planIn(text: string): PrintedPlan {
  const many = new RegExp(`${AMOUNT} a day for (\\d+) days(?:, then ${AMOUNT} on day (\\d+))?`).exec(text);
  if (many !== null) {
    const [, each = '', unit = '', days, last, lastUnit = '', lastDay] = many;
    const portions = Array<number>(Number(days)).fill(Number(each) * (SIZE[unit] ?? Number.NaN));
    if (last === undefined) return { portions, digit: digitOf(each, unit) };
    if (Number(lastDay) !== Number(days) + 1) throw new Error(`days do not follow: ${text}`);
    return {
      portions: [...portions, Number(last) * (SIZE[lastUnit] ?? Number.NaN)],
      digit: Math.min(digitOf(each, unit), digitOf(last, lastUnit)),
    };
  }
  const two = new RegExp(`${AMOUNT} on day 1 and ${AMOUNT} on day 2`).exec(text);
  const [, a = '', aUnit = '', b = '', bUnit = ''] = two ?? new RegExp(AMOUNT).exec(text) ?? [];
  const first = Number(a) * (SIZE[aUnit] ?? Number.NaN);
  if (two === null) return { portions: [first], digit: digitOf(a, aUnit) };
  return {
    portions: [first, Number(b) * (SIZE[bUnit] ?? Number.NaN)],
    digit: Math.min(digitOf(a, aUnit), digitOf(b, bUnit)),
  };
}

function digitOf(number: string, unit: string): number {
  return 10 ** -(number.split('.')[1]?.length ?? 0) * (SIZE[unit] ?? Number.NaN);
}

export function sumOf(portions: readonly number[]): number {
  return portions.reduce((sum, portion) => sum + portion, 0);
}
