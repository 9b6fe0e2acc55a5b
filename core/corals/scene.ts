import type { CoralEntry } from './entry.ts';

/** A place inside the glass, cm: x from the left, y from the front, z up from the bottom. */
export interface Spot {
  readonly xCm: number;
  readonly yCm: number;
  readonly zCm: number;
}

/** The inside of the tank, cm; z goes to the water line. */
export interface Box {
  readonly lengthCm: number;
  readonly widthCm: number;
  readonly heightCm: number;
}

/** Where a piece came from: how much light it is used to. */
export type Origin = 'tank-grown' | 'maricultured' | 'wild' | 'deep' | 'unknown';
export const origins = [
  'tank-grown',
  'maricultured',
  'wild',
  'deep',
  'unknown',
] as const satisfies readonly Origin[];

/** A coral as it stands: its middle at the ground it sits on, its width now. */
export interface Placed {
  readonly id: number;
  readonly entry: CoralEntry;
  /** What the member calls it; else the entry's first common name. */
  readonly label: string;
  readonly spot: Spot;
  /** The spot was said in words: good to a sixth of the tank either way. */
  readonly rough: boolean;
  readonly diameterCm: number;
  readonly origin: Origin;
  /** Days in this tank, where known. */
  readonly daysHere?: number | undefined;
}

/** Light measured at a spot, umol m-2 s-1. */
export interface LightPoint extends Spot {
  readonly id: number;
  readonly ppfd: number;
  readonly atMs: number;
}

/** The way the water mostly goes. */
export const flowDirections = [
  'left to right',
  'right to left',
  'front to back',
  'back to front',
  'changing',
] as const;
export type FlowDirection = (typeof flowDirections)[number];

/** Everything a placement is judged by. */
export interface Scene {
  readonly box: Box;
  /** The size of the glass is a guess from the volume. */
  readonly boxGuessed: boolean;
  readonly corals: readonly Placed[];
  readonly light: readonly LightPoint[];
  readonly flow?: FlowDirection | undefined;
}

export type Verdict = 'settled' | 'watch' | 'move';

/** What one rule says of one coral or one pair. */
export interface Finding {
  readonly rule:
    | 'light'
    | 'flow'
    | 'ground'
    | 'sting'
    | 'growth'
    | 'shade'
    | 'walking'
    | 'pump'
    | 'chemistry'
    | 'people'
    | 'law'
    | 'room';
  readonly verdict: Verdict;
  /** Ids of the corals it is about: one, or the two of a pair (the one at risk first). */
  readonly corals: readonly number[];
  /** One sentence with the numbers in it. */
  readonly reason: string;
  /** What the numbers rest on, in words: "common practice", "from memory", "published: ...". */
  readonly basis: string;
  /** The smallest change that would cure it; absent for what is settled. */
  readonly cure?: string | undefined;
  /** The gap that cure asks for between the two of a pair, cm. */
  readonly apartCm?: number | undefined;
  /** How bad, for the order inside a verdict: larger is worse. */
  readonly weight: number;
}
