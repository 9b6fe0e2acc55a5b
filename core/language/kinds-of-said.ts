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
