import type { ParameterId } from '../../core/water/parameter.ts';

/** How a parameter is written in the file. A code is never changed or given to another parameter. */
export const parameterCode: Readonly<Record<ParameterId, number>> = {
  salinity: 1,
  alkalinity: 2,
  calcium: 3,
  magnesium: 4,
  potassium: 5,
  strontium: 6,
  bromide: 7,
  iodine: 8,
  nitrate: 9,
  phosphate: 10,
  ammonia: 11,
  nitrite: 12,
  temperature: 13,
  ph: 14,
};

const ids = new Map(Object.entries(parameterCode).map(([id, code]) => [code, id as ParameterId]));

export const allCodes: readonly number[] = [...ids.keys()];

export function parameterOf(code: number): ParameterId {
  const id = ids.get(code);
  if (id === undefined) throw new Error(`no parameter has the code ${code}`);
  return id;
}
