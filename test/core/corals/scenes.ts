import { coralById } from '../../../core/corals/coral-list.ts';
import type { CoralEntry } from '../../../core/corals/entry.ts';
import type { LightPoint, Placed, Scene, Spot } from '../../../core/corals/scene.ts';

/** A large invented tank, so that nothing is near the glass. */
export const box = { lengthCm: 300, widthCm: 100, heightCm: 80 } as const;

export function kind(id: string): CoralEntry {
  const entry = coralById(id);
  if (entry === undefined) throw new Error(`no coral ${id}`);
  return entry;
}

export type Extra = Partial<Pick<Placed, 'rough' | 'origin' | 'daysHere' | 'diameterCm'>>;

/** A coral 10 cm wide, tank-grown, settled long ago. */
export function placed(id: number, coralId: string, at: Spot, extra: Extra = {}): Placed {
  const settled = { rough: false, diameterCm: 10, origin: 'tank-grown', daysHere: 400 } as const;
  return { id, entry: kind(coralId), label: coralId, spot: at, ...settled, ...extra };
}

export function spot(xCm: number, yCm: number, zCm: number): Spot {
  return { xCm, yCm, zCm };
}

export function sceneOf(corals: readonly Placed[], more: Partial<Scene> = {}): Scene {
  return { box, boxGuessed: false, corals, light: [], ...more };
}

/** Two corals of 10 cm at one height whose edges are `gapCm` apart: 1 on the left, 2 on the right. */
export function beside(one: string, other: string, gapCm: number, more: Partial<Scene> = {}): Scene {
  return sceneOf([placed(1, one, spot(100, 50, 20)), placed(2, other, spot(110 + gapCm, 50, 20))], more);
}

/** One coral on a reading of `ppfd`. */
export function lit(coralId: string, ppfd: number, extra: Extra = {}, at: Spot = spot(100, 50, 20)): Scene {
  return sceneOf([placed(1, coralId, at, extra)], { light: [reading(1, at, ppfd)] });
}

export function reading(id: number, at: Spot, ppfd: number, atMs = 0): LightPoint {
  return { ...at, id, ppfd, atMs };
}
