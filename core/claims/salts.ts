import { findCompound, type Compound } from '../dosing/compound.ts';
import type { Span } from '../light/lux.ts';
import { fromUnit, significant, span, toUnit } from '../quantity/format.ts';
import { readQuantity } from '../quantity/read.ts';
import { parameter, type ParameterId } from '../water/parameter.ts';
import type { Heard } from '../words/hear.ts';
import { is, type Mention } from '../words/mention.ts';

/** A salt a rule names: every form the word can mean. */
export interface NamedSalt {
  readonly label: string;
  readonly forms: readonly [Compound, ...Compound[]];
  readonly start: number;
}

/** The salts named in a rule, in order, each once. */
export function saltsIn(heard: Heard): readonly NamedSalt[] {
  const named = heard.compounds.flatMap(({ name, start }) => {
    const found = findCompound(name);
    const [first, ...rest] = found === undefined ? [] : 'atoms' in found ? [found] : found;
    if (first === undefined) return [];
    return [{ label: rest.length === 0 ? first.name : name, forms: [first, ...rest] as const, start }];
  });
  return named.filter(({ label }, index) => named.findIndex((each) => each.label === label) === index);
}

/** What a salt is dosed for. */
export function dosedFor({ forms: [first] }: NamedSalt): ParameterId {
  const [id] = first.raises;
  if (id === undefined) throw new Error(`${first.name} is dosed for nothing`);
  return id;
}

const SPOON = /(?:tsps?|teaspoons?|tbsps?|tablespoons?|cups?)$/;
/** 5 mL. */
export const TEASPOON_L = fromUnit('volume', 1, 'tsp');

/** Whether an amount was measured with a spoon or a cup. */
export function isSpoon({ text }: Mention): boolean {
  return SPOON.test(text);
}

/** The first amount of powder in a rule: weighed, or by the spoon. */
export function amountIn(heard: Heard, not?: Mention): Mention | undefined {
  return heard.mentions.find((m) => m !== not && (isSpoon(m) || is(m, 'mass')));
}

/** Grams of an amount of powder; a range where it was spooned, undefined where a spoon of it has no known weight. */
export function gramsOf(amount: Mention, { forms }: NamedSalt): Span | undefined {
  if (!isSpoon(amount)) {
    const grams = readQuantity('mass', amount.text, { field: 'rule' }).value;
    return { low: grams, high: grams };
  }
  const [each] = forms.map(({ teaspoonG }) => teaspoonG);
  if (each === undefined || forms.length > 1) return undefined;
  const spoonfuls = readQuantity('volume', amount.text, { field: 'rule' }).value / TEASPOON_L;
  return { low: each[0] * spoonfuls, high: each[1] * spoonfuls };
}

/** An amount as it is printed: "5 US gal", "1 tsp", "100 L". */
export function printed(amount: Mention): string {
  const kind = isSpoon(amount) || !is(amount, 'mass') ? 'volume' : 'mass';
  const { written, unit } = readQuantity(kind, amount.text, { field: 'rule' });
  return `${significant(written, 4)} ${unit}`;
}

/** The volume a rule is made for, as it is printed. */
export function printedBase(base: Mention): string {
  const { written, unit } = readQuantity('volume', base.text, { field: 'rule' });
  return `${significant(written, 4)} ${unit}`;
}

const BASE = /\b(?:per|in|into|for|to|every|each|raises?|lifts?|of)\s+(?:an?\s+|every\s+|each\s+)?$/;

/** "per 5 gal": the volume a rule is made for. */
export function baseIn(heard: Heard): Mention | undefined {
  return heard.mentions.find(
    (m) => is(m, 'volume') && !isSpoon(m) && BASE.test(heard.text.slice(0, m.start)),
  );
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

/** "7.1 to 8.8 dKH", "1.9 dKH": a canonical range in the parameter's own unit. */
export function ownSpan(id: ParameterId, { low, high }: Span): string {
  const unit = parameter(id).unit;
  const [from, to] = [significant(own(id, low), 3), significant(own(id, high), 3)];
  return from === to
    ? `${from} ${unit}`
    : `${span(significant(own(id, low), 2), significant(own(id, high), 2))} ${unit}`;
}
