import { Problem } from '../problem.ts';
import { say } from '../wording/say.ts';
import { arithmetic } from './arithmetic.ts';
import { askUnits, bareBands } from './bare.ts';
import { boxVolume } from './box.ts';
import { clean } from './clean.ts';
import { hasAmbiguousComma, normaliseNumbers, type CommaStyle } from './number.ts';
import { significant } from './format.ts';
import { GROUPED_BY_POINT, MAY_GROUP } from './marks.ts';
import { oneLength } from './one-length.ts';
import { definitionOf, type QuantityKind, type Unit } from './unit.ts';

/** A text read as a quantity: `value` in the canonical unit of its kind, `written` in the unit it came with. */
export interface Quantity {
  readonly kind: QuantityKind;
  readonly value: number;
  readonly written: number;
  /** Symbol of the unit it was written in. */
  readonly unit: string;
  /** What had to be interpreted, each a clause that can follow a comma. */
  readonly notes: readonly string[];
}

export interface ReadOptions {
  /** The option the text was given for; it names the Problem. */
  readonly field: string;
  /** Unit symbol for a number without a unit; without it the magnitude decides or the member is asked. */
  readonly fallback?: string | undefined;
  /** Range in canonical units used only to tell 1,350 from 1.35. */
  readonly plausible?: readonly [number, number] | undefined;
}

/**
 * Reads a text such as "8,3 dKH", "75 gal", "3 * 20 L - 10 %" or "120 x 50 x 50 cm" as a quantity of one kind.
 * Ambiguity is never settled silently: either a note says how it was read or a Problem with `choices` asks back.
 *
 * @throws Problem naming the field, what was given and the limit.
 */
export function readQuantity(kind: QuantityKind, text: string, options: ReadOptions): Quantity {
  const cleaned = clean(text).replace(/^(?:~|≈|=|about |approx\.? |approximately |ca\.? )+\s*/, '');
  if (cleaned === '') throw unreadable(kind, text, options.field);
  if (hasAmbiguousComma(cleaned)) return settleMark(kind, [cleaned, cleaned], text, options);
  if (GROUPED_BY_POINT.test(cleaned) && kind !== 'conductivity')
    return settleMark(kind, [cleaned, cleaned.replace(GROUPED_BY_POINT, '$1$2')], text, options);
  return (
    asThousands(kind, cleaned, text, options) ??
    withPointSaid(readStyled(kind, cleaned, text, options, 'decimal'), cleaned, text)
  );
}

/** "1.234 L" may be meant as thousands; it is read as a decimal, and that is said. */
function withPointSaid(found: Quantity, cleaned: string, text: string): Quantity {
  if (!MAY_GROUP.test(cleaned)) return found;
  return {
    ...found,
    notes: [...found.notes, `read ${text.trim()} as ${shown(found)}, with a decimal point`],
  };
}

/**
 * Reads several texts of one kind where a number without a unit takes the unit another one names:
 * now "5.3", goal "8 dKH" are both dKH; so are "5.3" and "8", since 8 can only be dKH.
 */
export function readAlike(
  kind: QuantityKind,
  texts: readonly { readonly text: string; readonly field: string }[],
  options: Omit<ReadOptions, 'field'> = {},
): Quantity[] {
  const attempts = texts.map(({ text, field }) =>
    attempt(() => readQuantity(kind, text, { ...options, field })),
  );
  const units = new Set(attempts.flatMap((found) => (found instanceof Problem ? [] : [found.unit])));
  const shared = units.size === 1 ? [...units][0] : undefined;
  return attempts.map((found, index) => {
    if (!(found instanceof Problem)) return found;
    const entry = texts[index];
    if (shared === undefined || found.choices.length === 0 || entry === undefined) throw found;
    return readQuantity(kind, entry.text, { ...options, field: entry.field, fallback: shared });
  });
}

function attempt(read: () => Quantity): Quantity | Problem {
  try {
    return read();
  } catch (error) {
    if (error instanceof Problem) return error;
    throw error;
  }
}

/** A quantity as it was written, without the tail a sum leaves behind: "60.3 gal". */
function shown({ written, unit }: Quantity): string {
  return `${significant(written, 10)} ${unit}`.trim();
}

/** "1.350" of magnesium, as written where the point marks thousands: only where 1.35 cannot be believed and 1350 can. */
function asThousands(
  kind: QuantityKind,
  cleaned: string,
  text: string,
  options: ReadOptions,
): Quantity | undefined {
  const [low, high] = options.plausible ?? [];
  if (low === undefined || high === undefined || !/^[1-9]\.\d{3}(?!\d)/.test(cleaned)) return undefined;
  const isIn = ({ value }: Quantity): boolean => value >= low && value <= high;
  const [decimal, thousands] = [cleaned, cleaned.replace('.', '')].map((each) =>
    attempt(() => readStyled(kind, each, text, options, 'decimal')),
  );
  if (decimal === undefined || decimal instanceof Problem || isIn(decimal)) return undefined;
  if (thousands === undefined || thousands instanceof Problem || !isIn(thousands)) return undefined;
  return {
    ...thousands,
    notes: [...thousands.notes, `read ${text.trim()} as ${shown(thousands)}`],
  };
}

/** Tries a text as a decimal and as thousands; `cleaned` is the text for each. One that fits is said, two are asked. */
function settleMark(
  kind: QuantityKind,
  cleaned: readonly [decimal: string, thousands: string],
  text: string,
  options: ReadOptions,
): Quantity {
  const both = (['decimal', 'thousands'] as const).map((style, index) =>
    attempt(() => readStyled(kind, cleaned[index] ?? '', text, options, style)),
  );
  const [low, high] = options.plausible ?? [-Infinity, Infinity];
  const fits = both.filter(
    (found): found is Quantity => !(found instanceof Problem) && found.value >= low && found.value <= high,
  );
  const [only] = fits;
  if (fits.length === 1 && only !== undefined) {
    return { ...only, notes: [...only.notes, `read ${text.trim()} as ${shown(only)}`] };
  }
  const [first] = both;
  if (fits.length === 0 && first instanceof Problem) throw first;
  const written = (fits.length === 0 ? both : fits).flatMap((found) =>
    found instanceof Problem ? [] : [shown(found)],
  );
  throw new Problem(say('convert.whichReading', { text: text.trim(), readings: either(written) }), {
    field: options.field,
    given: text.trim(),
    choices: written,
  });
}

function readStyled(
  kind: QuantityKind,
  cleaned: string,
  text: string,
  options: ReadOptions,
  style: CommaStyle,
): Quantity {
  const { field } = options;
  const numbers = normaliseNumbers(cleaned, field, style);
  if (kind === 'volume') {
    const box = boxVolume(numbers, field);
    if (box !== undefined) return inLimits({ kind, ...box }, text, field);
  }
  if (/u\d/.test(numbers)) throw unreadable(kind, text, field);
  const units = definitionOf(kind).units;
  const { marked, used } = markUnits(numbers, units);
  const factor = (index: number): number => used[index]?.factor ?? 1;
  const sum = marked.replaceAll(/(?<=[\d)\s])x(?=[\d(\s])/g, '*');
  if (kind === 'length') oneLength(sum, text, field);
  const term = arithmetic(sum, field, (index) => factor(index) / factor(0));
  const unit = term.unit >= 0 ? used[term.unit] : undefined;
  if (unit !== undefined) {
    if (used.length > 1 && used.some(({ offset }) => offset !== undefined))
      throw unreadable(kind, text, field);
    return inLimits(
      quantity(kind, term.value, unit, unit.note === undefined ? [] : [unit.note]),
      text,
      field,
    );
  }
  return inLimits(bareNumber(kind, term.value, text, options), text, field);
}

function quantity(kind: QuantityKind, written: number, unit: Unit, notes: readonly string[]): Quantity {
  return { kind, value: written * unit.factor + (unit.offset ?? 0), written, unit: unit.symbol, notes };
}

/** Replaces each unit name that follows a number, space or bracket by a placeholder `u0`, `u1`, ... */
function markUnits(text: string, units: readonly Unit[]): { marked: string; used: Unit[] } {
  const used: Unit[] = [];
  const marked = text.replace(pattern(units), (_, name: string) => {
    const unit = units.find(
      (candidate) => candidate.names.includes(name) || candidate.symbol.toLowerCase() === name,
    );
    if (unit === undefined) return name;
    if (!used.includes(unit)) used.push(unit);
    return ` u${used.indexOf(unit)} `;
  });
  return { marked, used };
}

const patterns = new WeakMap<readonly Unit[], RegExp>();

function pattern(units: readonly Unit[]): RegExp {
  const known = patterns.get(units);
  if (known !== undefined) return known;
  const names = units
    .flatMap((unit) => [unit.symbol.toLowerCase(), ...unit.names])
    .filter((name) => name !== '');
  const longestFirst = [...new Set(names)].sort((a, b) => b.length - a.length).map(escape);
  const made = new RegExp(`(?<![a-zµ°])(${longestFirst.join('|')})(?![a-z0-9µ°])`, 'g');
  patterns.set(units, made);
  return made;
}

function escape(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\/"']/g, '\\$&');
}

function bareNumber(kind: QuantityKind, value: number, text: string, options: ReadOptions): Quantity {
  const { units } = definitionOf(kind);
  const bySymbol = (symbol: string): Unit | undefined => units.find((unit) => unit.symbol === symbol);
  const fallback = options.fallback === undefined ? undefined : bySymbol(options.fallback);
  if (fallback !== undefined) return quantity(kind, value, fallback, []);
  const bands = bareBands[kind];
  const fitting = bands.filter((band) => value >= (band.min ?? -Infinity) && value <= (band.max ?? Infinity));
  const [band] = fitting;
  const unit = band === undefined ? undefined : bySymbol(band.unit);
  if (fitting.length === 1 && band !== undefined && unit !== undefined) {
    return quantity(
      kind,
      value,
      unit,
      band.obvious === true ? [] : [`read ${text.trim()} as ${unit.symbol}`],
    );
  }
  const offered =
    fitting.length > 0 ? fitting.map((found) => found.unit) : (askUnits[kind] ?? bands.map((b) => b.unit));
  throw new Problem(say('convert.whichUnit', { text: text.trim() }), {
    field: options.field,
    given: text.trim(),
    choices: offered.map((symbol) => `${text.trim()} ${symbol}`.trim()),
    hint: say('convert.hintUnitAfter', { units: either(offered) }),
  });
}

/** "mg/L NO3 or mg/L NO3-N" */
function either(all: readonly string[]): string {
  return all.reduce((one, other) => say('convert.oneOrOther', { one, other }));
}

function inLimits(found: Quantity, text: string, field: string): Quantity {
  const { min, max, canonical, label } = definitionOf(found.kind);
  if (Number.isFinite(found.value) && found.value >= min && found.value <= max) return found;
  const limit = say('convert.fromTo', { low: String(min), high: `${max} ${canonical}`.trim() });
  throw new Problem(say('convert.outsideKind', { kind: label, limit }), {
    field,
    given: text.trim(),
    limit,
  });
}

function unreadable(kind: QuantityKind, text: string, field: string): Problem {
  const { label, units } = definitionOf(kind);
  const symbols = [...new Set(units.map((unit) => unit.symbol))].slice(0, 5).join(', ');
  return new Problem(say('convert.unreadableKind', { kind: label }), {
    field,
    given: text.trim(),
    limit: symbols,
  });
}
