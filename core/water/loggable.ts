import { parameter, parameterIds, type ParameterId } from './parameter.ts';

/** What can be logged: every parameter, and salinity, which is kept as practical salinity ("ppt"). */
export type LoggableId = ParameterId | 'salinity';

export const loggableIds: readonly LoggableId[] = ['salinity', ...parameterIds];

export interface Loggable {
  readonly label: string;
  /** Unit values are kept and printed in. */
  readonly unit: string;
  readonly decimals: number;
  /** What a hobby instrument can tell apart: common practice, no source. */
  readonly resolution: number;
  /** Most a day in either direction that is usual, where there is such a limit: common practice, no source. */
  readonly pacePerDay: number | undefined;
}

const salinity: Loggable = { label: 'salinity', unit: 'ppt', decimals: 1, resolution: 0.7, pacePerDay: 1.3 };

/** Label, unit and precision of what is logged. Salinity: 0.001 SG is 1.3 ppt, half of it what a refractometer shows. */
export function loggable(id: LoggableId): Loggable {
  if (id === 'salinity') return salinity;
  const { label, unit, decimals, kitResolution, pace } = parameter(id);
  return { label, unit, decimals, resolution: kitResolution, pacePerDay: pace?.most };
}
