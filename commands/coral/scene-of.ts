import { counted } from '../../core/quantity/format.ts';
import { coralById } from '../../core/corals/coral-list.ts';
import { guessedBox } from '../../core/corals/guessed-box.ts';
import type { Box, LightPoint, Placed, Scene } from '../../core/corals/scene.ts';
import type { Keep, Tank } from '../keep.ts';
import type { KeptLightPoint, NewPlacing, Placing } from '../placed.ts';

const DAY_MS = 86_400_000;

/** Everything a placement in the tank is judged by. A coral whose kind the guide no longer has is left out. */
export function sceneOf(keep: Keep, tank: Tank, nowMs: number): Scene {
  const { box, flow } = keep.glass(tank.id);
  return {
    box: boxOf(keep, tank),
    boxGuessed: box === undefined,
    corals: told(keep.corals(tank.id).flatMap((placing) => placedOf(placing, nowMs) ?? [])),
    light: keep.lightPoints(tank.id).map(lightPointOf),
    flow,
  };
}

/** A coral of the scene that is not kept yet has this id. */
const NOT_KEPT = 0;

/** As it stands in a scene; undefined where the guide has no such kind. */
function placedOf(placing: NewPlacing & Partial<Placing>, nowMs: number): Placed | undefined {
  const entry = coralById(placing.coralId);
  if (entry === undefined) return undefined;
  const { id = NOT_KEPT, label, spot, rough, diameterCm, origin, since } = placing;
  return {
    id,
    entry,
    label: label ?? entry.names.common[0],
    spot,
    rough,
    diameterCm,
    origin,
    daysHere: since === undefined ? undefined : daysSince(since, nowMs),
  };
}

/** The inside of the tank; guessed from its volume where the glass is not known. */
export function boxOf(keep: Keep, { id, displayVolumeL, netVolumeL }: Tank): Box {
  const { box } = keep.glass(id);
  return box ?? guessedBox(Math.min(MOST_GUESSED_L, displayVolumeL ?? netVolumeL));
}

/** Beyond this a tank's proportions are anyone's guess. */
const MOST_GUESSED_L = 20_000;

/** Two of one name are told apart by their numbers. */
function told(corals: readonly Placed[]): readonly Placed[] {
  return corals.map((coral) =>
    corals.some(({ id, label }) => id !== coral.id && label === coral.label)
      ? { ...coral, label: `${coral.label} (${coral.id})` }
      : coral,
  );
}

function lightPointOf({ id, spot, ppfd, atMs }: KeptLightPoint): LightPoint {
  return { ...spot, id, ppfd, atMs };
}

/** Whole days since an ISO date; 0 for one to come. */
export function daysSince(day: string, nowMs: number): number {
  return Math.max(0, Math.floor((nowMs - Date.parse(`${day}T00:00:00Z`)) / DAY_MS));
}

/** "3 corals, 1 light reading, flow not said". */
export function sceneWords({ corals, light, flow }: Scene): string {
  return `${counted(corals.length, 'coral')}, ${counted(light.length, 'light reading')}, flow ${flow ?? 'not said'}`;
}
