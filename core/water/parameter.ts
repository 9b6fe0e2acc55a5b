import type { QuantityKind } from '../quantity/unit.ts';
import type { SourceCode } from '../sources.ts';

/**
 * What is measured in a reef tank: how it is named, which unit it is printed in, where a reading can be believed,
 * where keepers aim, and how far it may move in a day. Numbers are in `unit`, the one answers are given in
 * (dKH for alkalinity), and converted where they are used.
 *
 * Targets and paces are common practice, no source, unless `basis` says otherwise; practice differs between
 * keepers and the answer says so.
 */
export interface Parameter {
  readonly label: string;
  /** Lower-case words a member uses for it. */
  readonly names: readonly string[];
  readonly kind: QuantityKind;
  /** Unit symbol answers are given in. */
  readonly unit: string;
  readonly decimals: number;
  /** In `unit`: outside this a reading is doubted before anything else. */
  readonly plausible: readonly [number, number];
  /** In `unit`: where mixed reefs are usually kept. */
  readonly target: readonly [number, number];
  /** In `unit`: most a day, upward; `gentle` for delicate small-polyp tanks. */
  readonly pace?: { readonly most: number; readonly gentle?: number };
  /** In `unit`: what a hobby kit can tell apart (common practice, no source). */
  readonly kitResolution: number;
  readonly basis: readonly SourceCode[];
}

export const parameters = {
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
    plausible: [3, 16],
    target: [7, 11],
    pace: { most: 1, gentle: 0.5 },
    kitResolution: 0.3,
    basis: ['practice'],
  },
  calcium: {
    label: 'calcium',
    names: ['calcium', 'ca', 'calc'],
    kind: 'concentration',
    unit: 'mg/L',
    decimals: 0,
    plausible: [250, 550],
    target: [400, 450],
    pace: { most: 50, gentle: 25 },
    kitResolution: 10,
    basis: ['practice'],
  },
  magnesium: {
    label: 'magnesium',
    names: ['magnesium', 'mg', 'mag'],
    kind: 'concentration',
    unit: 'mg/L',
    decimals: 0,
    plausible: [800, 1800],
    target: [1250, 1400],
    pace: { most: 100, gentle: 50 },
    kitResolution: 30,
    basis: ['practice'],
  },
  potassium: {
    label: 'potassium',
    names: ['potassium', 'k'],
    kind: 'concentration',
    unit: 'mg/L',
    decimals: 0,
    plausible: [200, 600],
    target: [380, 420],
    pace: { most: 20, gentle: 10 },
    kitResolution: 20,
    basis: ['memory'],
  },
  strontium: {
    label: 'strontium',
    names: ['strontium', 'sr'],
    kind: 'concentration',
    unit: 'mg/L',
    decimals: 1,
    plausible: [1, 25],
    target: [7, 10],
    pace: { most: 1 },
    kitResolution: 1,
    basis: ['memory'],
  },
  bromide: {
    label: 'bromide',
    names: ['bromide', 'bromine', 'br'],
    kind: 'concentration',
    unit: 'mg/L',
    decimals: 0,
    plausible: [10, 120],
    target: [60, 72],
    pace: { most: 5 },
    kitResolution: 5,
    basis: ['memory'],
  },
  iodine: {
    label: 'iodine',
    names: ['iodine', 'iodide', 'iod'],
    kind: 'concentration',
    unit: 'mg/L',
    decimals: 3,
    plausible: [0, 0.5],
    target: [0.03, 0.08],
    pace: { most: 0.01 },
    kitResolution: 0.02,
    basis: ['memory'],
  },
  nitrate: {
    label: 'nitrate',
    names: ['nitrate', 'nitrates', 'no3', 'trate', 'trates'],
    kind: 'nitrate',
    unit: 'mg/L',
    decimals: 1,
    plausible: [0, 200],
    target: [2, 20],
    pace: { most: 1 },
    kitResolution: 2,
    basis: ['practice'],
  },
  phosphate: {
    label: 'phosphate',
    names: ['phosphate', 'phosphates', 'po4', 'phos'],
    kind: 'phosphate',
    unit: 'mg/L',
    decimals: 3,
    plausible: [0, 3],
    target: [0.03, 0.1],
    pace: { most: 0.02 },
    kitResolution: 0.03,
    basis: ['practice'],
  },
  ammonia: {
    label: 'ammonia',
    names: ['ammonia', 'ammonium', 'nh3', 'nh4', 'amm', 'tan'],
    kind: 'ammonia',
    unit: 'mg/L',
    decimals: 2,
    plausible: [0, 20],
    target: [0, 0],
    kitResolution: 0.25,
    basis: ['practice'],
  },
  nitrite: {
    label: 'nitrite',
    names: ['nitrite', 'nitrites', 'no2'],
    kind: 'nitrite',
    unit: 'mg/L',
    decimals: 2,
    plausible: [0, 20],
    target: [0, 0.1],
    kitResolution: 0.1,
    basis: ['practice'],
  },
  temperature: {
    label: 'temperature',
    names: ['temperature', 'temp'],
    kind: 'temperature',
    unit: '°C',
    decimals: 1,
    plausible: [15, 35],
    target: [24, 27],
    pace: { most: 1, gentle: 0.5 },
    kitResolution: 0.5,
    basis: ['practice'],
  },
  ph: {
    label: 'pH',
    names: ['ph'],
    kind: 'ph',
    unit: '',
    decimals: 2,
    plausible: [7, 9],
    target: [7.8, 8.4],
    kitResolution: 0.1,
    basis: ['practice'],
  },
} as const satisfies Record<string, Parameter>;

export type ParameterId = keyof typeof parameters;

export const parameterIds = Object.keys(parameters) as readonly ParameterId[];

export function parameter(id: ParameterId): Parameter {
  return parameters[id];
}

/** The parameter a word names, or undefined: "alk", "KH", "no3". */
export function findParameter(word: string): ParameterId | undefined {
  const wanted = word.trim().toLowerCase();
  return parameterIds.find((id) => id === wanted || parameter(id).names.includes(wanted));
}
