import type { Said } from './said.ts';
import type { NumberSpan } from './scan/number-span.ts';

export function isShare({ number }: Said): boolean {
  return number.kinds.includes('share');
}

/** A volume or a share: never a level. */
export function isWater({ number }: Said): boolean {
  return number.kinds.includes('volume') || number.kinds.includes('share');
}

const SPOON = /^(?:tsp|tbsp|tea|table|(?:us )?cup)/;

/** Spoons and cups. */
export function isSpoon(unit: string): boolean {
  return SPOON.test(unit);
}

/** Spoons, millilitres and fluid ounces measure a dose, not a tank. */
export function isDoseUnit(unit: string): boolean {
  return isSpoon(unit) || /^(?:ml|millil)|\bfl/.test(unit);
}

/** Spoons and millilitres of something: a dose, and no water of the tank. */
export function isDose({ of, number }: Said): boolean {
  return number.kinds.includes('volume') && isDoseUnit(number.unit) && !NOT_DOSED.has(of);
}

const NOT_DOSED: ReadonlySet<string> = new Set(['nothing', 'water', 'share', 'container', 'sump', 'display']);

const LEVEL_UNITS: ReadonlySet<string> = new Set(['alkalinity', 'concentration', 'nitrate', 'phosphate']);

/** A number that can be a level of what is dosed: without a unit, or with one of a parameter. "80 g/L" is none. */
export function isLevelUnit({ kinds, unit }: NumberSpan): boolean {
  return kinds.length === 0 || (kinds.some((kind) => LEVEL_UNITS.has(kind)) && !unit.startsWith('g/'));
}
