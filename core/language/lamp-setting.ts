import type { Said } from './said.ts';

/** Hours in a day: a larger bare setting is no time. */
const DAY_HOURS = 24;

/** A setting of a lamp in per cent, as text: also a bare one beside another with its sign, "from 72 to 61 %". */
export function percentSaid(one: Said, said: readonly Said[]): string | undefined {
  const { part, number, text } = one;
  if (part !== 'setting') return undefined;
  if (number.kinds.includes('share')) return text;
  const isBare = number.kinds.length === 0 && number.value > DAY_HOURS && number.value <= 100;
  const isBeside = said.some((each) => each.part === 'setting' && each.number.kinds.includes('share'));
  return isBare && isBeside ? `${number.number} %` : undefined;
}
