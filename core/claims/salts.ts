import type { Span } from '../light/lux.ts';
import { fromUnit, significant, span, toUnit } from '../quantity/format.ts';
import { readQuantity } from '../quantity/read.ts';
import { parameter, type ParameterId } from '../water/parameter.ts';
import type { NamedSalt } from './named-salts.ts';
import { is, isBase, type Amount, type Stated } from './stated.ts';

/** What a salt is dosed for. */
export function dosedFor({ forms: [first] }: NamedSalt): ParameterId {
  const [id] = first.raises;
  if (id === undefined) throw new Error(`${first.name} is dosed for nothing`);
  return id;
}

const SPOONS: ReadonlySet<string> = new Set(['tsp', 'tbsp', 'US cup']);
/** 5 mL. */
export const TEASPOON_L = fromUnit('volume', 1, 'tsp');

/** Whether an amount was measured with a spoon or a cup. */
export function isSpoon(amount: Amount): boolean {
  return is(amount, 'volume') && SPOONS.has(volumeUnit(amount));
}

/** Symbol of the unit of a volume. */
export function volumeUnit({ text }: Amount): string {
  return readQuantity('volume', text, { field: 'rule' }).unit;
}

/** The first amount of powder in a rule: weighed, or by the spoon. */
export function amountIn({ amounts }: Stated): Amount | undefined {
  return amounts.find((amount) => isSpoon(amount) || is(amount, 'mass'));
}

/** The water a rule is made for: a volume, no spoon, that is not the amount of powder. */
export function baseIn(stated: Stated, not = amountIn(stated)): Amount | undefined {
  return stated.amounts.find(
    (amount) => amount !== not && is(amount, 'volume') && !isSpoon(amount) && isBase(stated, amount),
  );
}

/** Litres of a volume. */
export function litresOf({ text }: Amount): number {
  return readQuantity('volume', text, { field: 'rule' }).value;
}

/** Grams of an amount that was weighed. */
export function weighedG({ text }: Amount): number {
  return readQuantity('mass', text, { field: 'rule' }).value;
}

/** Grams of an amount of powder; a range where it was spooned, undefined where a spoon of it has no known weight. */
export function gramsOf(amount: Amount, { forms }: NamedSalt): Span | undefined {
  if (!isSpoon(amount)) {
    const grams = weighedG(amount);
    return { low: grams, high: grams };
  }
  const [each] = forms.map(({ teaspoonG }) => teaspoonG);
  if (each === undefined || forms.length > 1) return undefined;
  const spoonfuls = litresOf(amount) / TEASPOON_L;
  return { low: each[0] * spoonfuls, high: each[1] * spoonfuls };
}

/** An amount as it is printed: "5 US gal", "1 tsp", "100 L". */
export function printed(amount: Amount): string {
  const kind = isSpoon(amount) || !is(amount, 'mass') ? 'volume' : 'mass';
  const { written, unit } = readQuantity(kind, amount.text, { field: 'rule' });
  return `${significant(written, 4)} ${unit}`;
}

/** The volume a rule is made for, as it is printed. */
export function printedBase(base: Amount): string {
  const { written, unit } = readQuantity('volume', base.text, { field: 'rule' });
  return `${significant(written, 4)} ${unit}`;
}

/** Canonical value in the parameter's own unit, as a number. */
export function own(id: ParameterId, value: number): number {
  const { kind, unit } = parameter(id);
  return toUnit(kind, value, unit);
}

/** The inverse of `own`. */
export function canonical(id: ParameterId, value: number): number {
  const { kind, unit } = parameter(id);
  return fromUnit(kind, value, unit);
}

/** A level in the parameter's own canonical unit; a bare number is in the unit it is printed in. */
export function levelOf(id: ParameterId, { text }: Amount): number {
  const { kind, unit } = parameter(id);
  return readQuantity(kind, text, { field: 'rule', fallback: unit }).value;
}

/** "7.1 to 8.8 dKH", "1.9 dKH": a canonical range in the parameter's own unit. */
export function ownSpan(id: ParameterId, { low, high }: Span): string {
  const unit = parameter(id).unit;
  const [from, to] = [significant(own(id, low), 3), significant(own(id, high), 3)];
  return from === to
    ? `${from} ${unit}`
    : `${span(significant(own(id, low), 2), significant(own(id, high), 2))} ${unit}`;
}
