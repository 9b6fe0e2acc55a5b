import type { CoralKeep } from '../../commands/placed.ts';
import type { Tables } from './tables.ts';

/** Binds what is about corals to one person at a time; see `openKeeps`. */
export function openCoralKeeps({
  people,
  tanks,
  glasses,
  corals,
  lightPoints,
}: Tables): (discordId: string) => CoralKeep {
  return (id) => {
    const me = (): number => people.keyOf(id);
    const has = (tankId: number): boolean => tanks.get(me(), tankId) !== undefined;
    return {
      glass: (tankId) => glasses.get(me(), tankId),
      setGlass: (tankId, glass) => glasses.set(me(), tankId, glass),
      corals: (tankId) => corals.all(me(), tankId),
      addCoral: (tankId, placing) => (has(tankId) ? corals.add(me(), tankId, placing) : undefined),
      changeCoral: (tankId, coralId, placing) => corals.change(me(), tankId, coralId, placing),
      removeCoral: (tankId, coralId) => corals.remove(me(), tankId, coralId),
      lightPoints: (tankId) => lightPoints.all(me(), tankId),
      addLightPoints: (tankId, points) => (has(tankId) ? lightPoints.add(me(), tankId, points) : []),
      removeLightPoint: (tankId, pointId) => lightPoints.remove(me(), tankId, pointId),
    };
  };
}
