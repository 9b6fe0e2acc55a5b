import type { Said } from './said.ts';

/** Hours in a day: a larger bare setting is no time. */
const DAY_HOURS = 24;

/** A setting of a lamp in per cent, as text: also a bare one of the light, "blues 60 to 85", or beside one with its sign. */
export function percentSaid(one: Said, said: readonly Said[]): string | undefined {
  const { part, of, number, text } = one;
  if (part !== 'setting') return undefined;
  if (number.kinds.includes('share')) return text;
  const isBare = number.kinds.length === 0 && number.value > DAY_HOURS && number.value <= 100;
  const isBeside = said.some((each) => each.part === 'setting' && each.number.kinds.includes('share'));
  return isBare && (of === 'light' || isBeside) ? `${number.number} %` : undefined;
}
