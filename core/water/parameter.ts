import { clean } from '../quantity/clean.ts';
import type { QuantityKind } from '../quantity/unit.ts';
import type { SourceCode } from '../sources.ts';

/**
 * What is measured in a reef tank: how it is named, which unit it is kept and printed in, and how fine a hobby
 * instrument is. What a level means (where it can be believed, is usual, may move to, is urgent) stands in limits.ts.
 */
export interface Parameter {
  readonly label: string;
  /** Lower-case words a member uses for it. */
  readonly names: readonly string[];
  readonly kind: QuantityKind;
  /** Unit symbol answers are given in. */
  readonly unit: string;
  readonly decimals: number;
  /**
   * In `unit`: what a hobby kit can tell apart (common practice, no source). Salinity: 0.001 SG is 1.3 ppt, half of it
   * what a refractometer shows.
   */
  readonly kitResolution: number;
  readonly basis: readonly SourceCode[];
}

export const parameters = {
  salinity: {
    label: 'salinity',
    names: ['salinity', 'specific gravity', 's.g.', 'sg', 'gravity', 'conductivity', 'sal'],
    kind: 'salinity',
    unit: 'ppt',
    decimals: 1,
    kitResolution: 0.7,
    basis: ['practice'],
  },
  alkalinity: {
    label: 'alkalinity',
    names: [
      'alkalinity',
      'alk',
      'kh',
      'dkh',
      'carbonate hardness',
      'carb hardness',
      'alkalinty',
      'akalinity',
    ],
    kind: 'alkalinity',
    unit: 'dKH',
    decimals: 1,
    kitResolution: 0.3,
    basis: ['practice'],
  },
  calcium: {
    label: 'calcium',
    names: ['calcium', 'ca', 'calc', 'cal'],
    kind: 'concentration',
    unit: 'mg/L',
    decimals: 0,
    kitResolution: 10,
    basis: ['practice'],
  },
  magnesium: {
    label: 'magnesium',
    names: ['magnesium', 'mg', 'mag'],
    kind: 'concentration',
    unit: 'mg/L',
    decimals: 0,
    kitResolution: 30,
    basis: ['practice'],
  },
  potassium: {
    label: 'potassium',
    names: ['potassium', 'k'],
    kind: 'concentration',
    unit: 'mg/L',
    decimals: 0,
    kitResolution: 20,
    basis: ['memory'],
  },
  strontium: {
    label: 'strontium',
    names: ['strontium', 'sr'],
    kind: 'concentration',
    unit: 'mg/L',
    decimals: 1,
    kitResolution: 1,
    basis: ['memory'],
  },
  bromide: {
    label: 'bromide',
    names: ['bromide', 'bromine', 'br'],
    kind: 'concentration',
    unit: 'mg/L',
    decimals: 0,
    kitResolution: 5,
    basis: ['memory'],
  },
  iodine: {
    label: 'iodine',
    names: ['iodine', 'iodide', 'iod'],
    kind: 'concentration',
    unit: 'mg/L',
    decimals: 3,
    kitResolution: 0.02,
    basis: ['memory'],
  },
  nitrate: {
    label: 'nitrate',
    names: ['nitrate', 'nitrates', 'no3', 'trate', 'trates'],
    kind: 'nitrate',
    unit: 'mg/L',
    decimals: 1,
    kitResolution: 2,
    basis: ['practice'],
  },
  phosphate: {
    label: 'phosphate',
    names: ['phosphate', 'phosphates', 'po4', 'phos'],
    kind: 'phosphate',
    unit: 'mg/L',
    decimals: 3,
    kitResolution: 0.03,
    basis: ['practice'],
  },
  ammonia: {
    label: 'ammonia',
    names: ['ammonia', 'ammonium', 'amonia', 'ammon', 'nh3', 'nh4', 'amm', 'tan'],
    kind: 'ammonia',
    unit: 'mg/L',
    decimals: 2,
    kitResolution: 0.25,
    basis: ['practice'],
  },
  nitrite: {
    label: 'nitrite',
    names: ['nitrite', 'nitrites', 'no2'],
    kind: 'nitrite',
    unit: 'mg/L',
    decimals: 2,
    kitResolution: 0.1,
    basis: ['practice'],
  },
  temperature: {
    label: 'temperature',
    names: ['temperature', 'temp'],
    kind: 'temperature',
    unit: '°C',
    decimals: 1,
    kitResolution: 0.5,
    basis: ['practice'],
  },
  ph: {
    label: 'pH',
    names: ['ph'],
    kind: 'ph',
    unit: '',
    decimals: 2,
    kitResolution: 0.1,
    basis: ['practice'],
  },
} as const satisfies Record<string, Parameter>;

export type ParameterId = keyof typeof parameters;

export const parameterIds = Object.keys(parameters) as readonly ParameterId[];

export function parameter(id: ParameterId): Parameter {
  return parameters[id];
}

/** The label at the beginning of a sentence: "Alkalinity", "pH". */
export function firstLabel(id: ParameterId): string {
  const { label } = parameter(id);
  return id === 'ph' ? label : label.charAt(0).toUpperCase() + label.slice(1);
}

/** The parameter a word names, or undefined: "alk", "KH", "no3". */
export function findParameter(word: string): ParameterId | undefined {
  const wanted = clean(word);
  return parameterIds.find((id) => id === wanted || parameter(id).names.includes(wanted));
}

/** A value as it is printed, so that the number judged is the number read. Check: alkalinity 13.96 -> 14. */
export function asPrinted(id: ParameterId, value: number): number {
  return Number(value.toFixed(parameter(id).decimals));
}
