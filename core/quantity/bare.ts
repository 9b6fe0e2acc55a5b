import type { QuantityKind } from './unit.ts';

/**
 * Which unit a number without one can only be, by magnitude. A value inside exactly one band is read so and the
 * reading is said; inside several bands, or none, the member is asked. Bands are this project's own choice:
 * everything a reef tank, its equipment or its test kits can show, so that they overlap only where a reading
 * really could be either. A kind with one band without limits has one possible unit.
 */
export interface BareBand {
  readonly unit: string;
  readonly min?: number;
  readonly max?: number;
  /** True where the unit goes without saying and need not be mentioned. */
  readonly obvious?: boolean;
}

export const bareBands: Readonly<Record<QuantityKind, readonly BareBand[]>> = {
  volume: [],
  mass: [],
  length: [],
  alkalinity: [
    { unit: 'dKH', min: 2.5, max: 25 },
    { unit: 'meq/L', min: 0.8, max: 5.2 },
    { unit: 'ppm CaCO3', min: 100, max: 450 },
  ],
  concentration: [{ unit: 'mg/L', obvious: true }],
  nitrate: [{ unit: 'mg/L' }],
  phosphate: [{ unit: 'mg/L', max: 5 }],
  ammonia: [{ unit: 'mg/L' }],
  nitrite: [{ unit: 'mg/L' }],
  salinity: [{ unit: 'ppt', min: 30, max: 42 }],
  temperature: [
    { unit: '°C', min: 0, max: 40 },
    { unit: '°F', min: 50, max: 110 },
  ],
  conductivity: [
    { unit: 'mS/cm', min: 1, max: 120 },
    { unit: 'µS/cm', min: 1000, max: 120000 },
  ],
  days: [],
  hours: [{ unit: 'h', obvious: true }],
  light: [{ unit: 'PAR', obvious: true }],
  illuminance: [{ unit: 'lux', obvious: true }],
  share: [{ unit: '%', obvious: true }],
  ph: [{ unit: '', obvious: true }],
};

/** Units offered when a number without one is asked back, in the order shown. */
export const askUnits: Partial<Record<QuantityKind, readonly string[]>> = {
  volume: ['L', 'US gal', 'imp gal'],
  mass: ['g', 'kg', 'oz', 'lb'],
  length: ['cm', 'in'],
  days: ['days', 'weeks'],
  phosphate: ['ppb PO4', 'ppb P'],
};
