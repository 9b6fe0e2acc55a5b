import type { Said } from './said.ts';

/** Three sides that follow each other: "120x50x50", "60 by 40 by 45 cm"; each with its own unit where they differ: then a bare one is none. */
export function boxOf(lengths: readonly Said[]): string | undefined {
  const sides = lengths.slice(0, 3).map(({ number }) => number);
  if (sides.length < 3) return undefined;
  const units = new Set(sides.map(({ unit }) => unit).filter((unit) => unit !== ''));
  const [unit = ''] = units;
  if (units.size < 2) return `${sides.map(({ number }) => number).join(' x ')} ${unit}`.trim();
  if (sides.some(({ unit: own }) => own === '')) return undefined;
  return sides.map((side) => `${side.number} ${side.unit}`).join(' x ');
}
