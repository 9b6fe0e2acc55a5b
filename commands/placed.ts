import type { Box, FlowDirection, Origin, Spot } from '../core/corals/scene.ts';

/** A coral the member has placed in a tank. */
export interface NewPlacing {
  /** Id of the entry in core/corals. */
  readonly coralId: string;
  /** The member's own name for it. */
  readonly label?: string | undefined;
  readonly spot: Spot;
  /** The spot was said in words. */
  readonly rough: boolean;
  readonly diameterCm: number;
  readonly origin: Origin;
  /** ISO date it came into this tank. */
  readonly since?: string | undefined;
}

export interface Placing extends NewPlacing {
  readonly id: number;
}

export interface NewLightPoint {
  readonly spot: Spot;
  readonly ppfd: number;
  readonly atMs: number;
}

export interface KeptLightPoint extends NewLightPoint {
  readonly id: number;
}

/** The inside of the glass, and the way the water goes, where known. */
export interface Glass {
  readonly box?: Box | undefined;
  readonly flow?: FlowDirection | undefined;
}

/** Corals one tank may have. */
export const MOST_CORALS = 150;
/** Light readings one tank may have; the newest stay. */
export const MOST_LIGHT_POINTS = 200;

/** The part of a `Keep` about corals; bound to one member as all of it. A tank or coral of others does not exist. */
export interface CoralKeep {
  readonly glass: (tankId: number) => Glass;
  readonly setGlass: (tankId: number, glass: Glass) => boolean;
  /** In the order they came. */
  readonly corals: (tankId: number) => readonly Placing[];
  /** @throws Problem when there are `MOST_CORALS` already. */
  readonly addCoral: (tankId: number, placing: NewPlacing) => Placing | undefined;
  readonly changeCoral: (tankId: number, id: number, placing: NewPlacing) => Placing | undefined;
  readonly removeCoral: (tankId: number, id: number) => boolean;
  /** Oldest first. */
  readonly lightPoints: (tankId: number) => readonly KeptLightPoint[];
  readonly addLightPoints: (tankId: number, points: readonly NewLightPoint[]) => readonly KeptLightPoint[];
  readonly removeLightPoint: (tankId: number, id: number) => boolean;
}
