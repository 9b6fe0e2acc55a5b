import type { Said } from './said.ts';

export function isShare({ number }: Said): boolean {
  return number.kinds.includes('share');
}

/** A volume or a share: never a level. */
export function isWater({ number }: Said): boolean {
  return number.kinds.includes('volume') || number.kinds.includes('share');
}

/** Spoons and millilitres of something: a dose, and no water of the tank. */
export function isDose({ of, number }: Said): boolean {
  const isSmall = ['ml', 'tsp', 'tbsp', 'cup'].some((unit) => number.unit.startsWith(unit));
  return number.kinds.includes('volume') && isSmall && !NOT_DOSED.has(of);
}

const NOT_DOSED: ReadonlySet<string> = new Set(['nothing', 'water', 'share', 'container', 'sump', 'display']);

/** Light measured: hours and per cent of a lamp are its settings. */
export function isLight({ part, of, number }: Said): boolean {
  if (number.kinds.includes('light') || number.kinds.includes('illuminance')) return true;
  return number.kinds.length === 0 && (part === 'light' || (of === 'light' && part !== 'none'));
}
