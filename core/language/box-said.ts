import { forms } from '../tank/size.ts';
import type { Said } from './said.ts';
import { sidesWith } from './side-units.ts';

export const BOX_SIDES = forms.box.length;

/** Whether the sides of a box are said: they tell the water of a tank as a volume does. */
export function hasBox(said: readonly Said[]): boolean {
  return said.filter(({ part }) => part === 'length').length >= BOX_SIDES;
}

/** Three sides that follow each other: "120x50x50", "60 by 40 by 45 cm"; none where a bare one stands beside two units. */
export function boxOf(lengths: readonly Said[]): string | undefined {
  const sides = lengths.slice(0, BOX_SIDES);
  const units = new Set(sides.map(({ number }) => number.unit));
  const isOpen = units.has('') && units.size > 2;
  return sides.length < BOX_SIDES || isOpen ? undefined : sidesWith(sides).text;
}
