import type { Answer, Fact } from '../answer.ts';
import { shortLimits } from './limits.ts';

/** What is said first: a sentence of the first line, or a fact where that has no room for it (without a label, neither). */
export interface Opening {
  readonly label?: string;
  readonly value: string;
  /** The sentence, where it is another than the value. */
  readonly sentence?: string;
  /** It stands before what weighs more. */
  readonly isBefore?: true;
}

/** The answer begun with these, in the order of their weight; the first of them is always said in the first line. */
export function opened(parts: readonly (Opening | undefined)[], given: Answer): Answer {
  const facts: Fact[] = [];
  let headline = '';
  for (const { label, value, sentence = value, isBefore } of parts.filter((part) => part !== undefined)) {
    const longer = (isBefore === true ? `${sentence} ${headline}` : `${headline} ${sentence}`).trim();
    if (headline === '' || longer.length <= shortLimits.headline) headline = longer;
    else if (label !== undefined) facts.push({ label, value });
  }
  return { ...given, headline, facts: [...facts, ...given.facts] };
}

/** A first line that says of salinity that it is off. */
const SAID = /\bsalinity\b[^;]{0,40}\b(?:low|high|off|below|above)\b|\b(?:low|high) salinity\b/i;
/** A remark that cannot wait for the answer (core/water/salinity-remark.ts). */
const URGENT = /\bAct today\b/;

/** The parts of a first line with a remark on the tank's salinity, which weighs most where it is urgent. */
export function withSalinity(
  remark: string | undefined,
  [first, ...others]: readonly [Opening, ...(readonly Opening[])],
): readonly Opening[] {
  if (remark === undefined) return [first, ...others];
  const off = { label: 'Salinity', value: remark.replace(/^Salinity /, ''), sentence: remark };
  return URGENT.test(remark) ? [off, first, ...others] : [first, { ...off, isBefore: true }, ...others];
}

/** The answer with a remark on the tank's salinity in its first line, unless that says it already. */
export function remarkFirst(remark: string | undefined, given: Answer): Answer {
  if (remark === undefined || SAID.test(given.headline)) return given;
  if (given.facts.some(({ value }) => remark.endsWith(value))) return given;
  return opened(withSalinity(remark, [{ label: 'as asked', value: given.headline }]), given);
}
