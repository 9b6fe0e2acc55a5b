import type { Said } from './said.ts';

/** A bare side above this beside one in feet is in inches: "4ft 18 18". Own choice. */
const MOST_FT = 10;

const SIDES = 3;

/** Whether the sides of a box are said: they tell the water of a tank as a volume does. */
export function hasBox(said: readonly Said[]): boolean {
  return said.filter(({ part }) => part === 'length').length >= SIDES;
}

/** Three sides that follow each other: "120x50x50", "60 by 40 by 45 cm"; each with its own unit where they differ: then a bare one is none. */
export function boxOf(lengths: readonly Said[]): string | undefined {
  const sides = lengths.slice(0, SIDES).map(({ number }) => number);
  if (sides.length < SIDES) return undefined;
  const units = new Set(sides.map(({ unit }) => unit).filter((unit) => unit !== ''));
  const [unit = ''] = units;
  if (
    unit === 'ft' &&
    units.size === 1 &&
    sides.some(({ unit: own, value }) => own === '' && value > MOST_FT)
  )
    return sides
      .map(({ number, unit: own, value }) => `${number} ${own !== 'ft' && value > MOST_FT ? 'in' : 'ft'}`)
      .join(' x ');
  if (units.size < 2) return `${sides.map(({ number }) => number).join(' x ')} ${unit}`.trim();
  if (sides.some(({ unit: own }) => own === '')) return undefined;
  return sides.map((side) => `${side.number} ${side.unit}`).join(' x ');
}
