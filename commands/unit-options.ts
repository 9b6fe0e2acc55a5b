import { z } from 'zod';
import type { ChosenUnits } from '../core/quantity/chosen-units.ts';

/** How members choose a unit, and its symbol. */
const volumeUnits = { litres: 'L', 'US gallons': 'US gal', 'imperial gallons': 'imp gal' } as const;
const lengthUnits = { cm: 'cm', inches: 'in' } as const;
const temperatureUnits = { celsius: '°C', fahrenheit: '°F' } as const;
const alkalinityUnits = { dKH: 'dKH', 'meq/L': 'meq/L', 'ppm CaCO3': 'ppm CaCO3' } as const;

function keys<T extends string>(units: Readonly<Record<T, string>>): [T, ...T[]] {
  return Object.keys(units) as [T, ...T[]];
}

/** The options that choose units: what numbers without one are read in, and what answers tell. */
export const unitOptions = {
  volume: z.enum(keys(volumeUnits)).describe('Unit of volumes').optional(),
  length: z.enum(keys(lengthUnits)).describe('Unit of lengths').optional(),
  temperature: z.enum(keys(temperatureUnits)).describe('Unit of temperatures').optional(),
  alkalinity: z.enum(keys(alkalinityUnits)).describe('Unit of alkalinities').optional(),
};

/** What was chosen, by those names. */
export interface UnitInput {
  readonly volume?: keyof typeof volumeUnits | undefined;
  readonly length?: keyof typeof lengthUnits | undefined;
  readonly temperature?: keyof typeof temperatureUnits | undefined;
  readonly alkalinity?: keyof typeof alkalinityUnits | undefined;
}

/** The units with those that are chosen anew. */
export function withUnits(before: ChosenUnits, given: UnitInput): ChosenUnits {
  const { volume, length, temperature, alkalinity } = given;
  return {
    volume: volume === undefined ? before.volume : volumeUnits[volume],
    length: length === undefined ? before.length : lengthUnits[length],
    temperature: temperature === undefined ? before.temperature : temperatureUnits[temperature],
    alkalinity: alkalinity === undefined ? before.alkalinity : alkalinityUnits[alkalinity],
  };
}
