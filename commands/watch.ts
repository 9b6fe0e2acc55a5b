import type { ParameterId } from '../core/water/parameter.ts';

/** A border of one parameter that the member wants to be told of, in the parameter's own unit; one of the two at least. */
export interface Watch {
  readonly parameter: ParameterId;
  readonly over?: number | undefined;
  readonly under?: number | undefined;
}

/** The part of a `Keep` about watches: one a parameter of a tank. */
export interface WatchKeep {
  /** In the order of the parameters. */
  readonly watches: (tankId: number) => readonly Watch[];
  /** Sets it in place of the one there was; false for a tank that is not the member's. */
  readonly setWatch: (tankId: number, watch: Watch) => boolean;
  readonly removeWatch: (tankId: number, parameter: ParameterId) => boolean;
}
