import type { SourceCode } from '../sources.ts';
import type { ParameterId } from './parameter.ts';
import { limitsOf } from './limits.ts';

/** Kinds of keeping; "mixed" is the default. */
export const tankKinds = ['soft', 'large-polyp', 'small-polyp', 'mixed', 'fish'] as const;
export type TankKind = (typeof tankKinds)[number];

/** Where a reading should lie, in the parameter's own unit, and why. */
export interface Target {
  readonly range: readonly [number, number];
  readonly reason: string;
  readonly basis: readonly SourceCode[];
}

type Ranges = Partial<Record<ParameterId, readonly [number, number]>>;

/** Practical salinity with stony corals: common practice, no source. */
const STONY_SALINITY = [34, 36] as const;

/** Ranges that differ from the common ones of limits.ts, by kind: common practice, no source. */
const byKind: Readonly<Record<TankKind, Ranges>> = {
  soft: {
    calcium: [380, 450],
    magnesium: [1200, 1400],
    nitrate: [2, 30],
    phosphate: [0.03, 0.2],
  },
  'large-polyp': {
    salinity: STONY_SALINITY,
    alkalinity: [8, 10],
    nitrate: [5, 20],
    phosphate: [0.03, 0.12],
    ph: [7.9, 8.4],
  },
  'small-polyp': {
    salinity: STONY_SALINITY,
    temperature: [24.5, 26.5],
    alkalinity: [7, 9],
    magnesium: [1280, 1400],
    nitrate: [2, 10],
    phosphate: [0.03, 0.08],
    ph: [8, 8.4],
  },
  mixed: { salinity: STONY_SALINITY },
  fish: {
    // Own choice: fish bear more than corals.
    salinity: [32.5, 36.5],
    alkalinity: [7, 12],
    calcium: [350, 500],
    magnesium: [1100, 1500],
    nitrate: [0, 40],
    phosphate: [0, 0.5],
  },
};

const reasons: Readonly<Record<TankKind, string>> = {
  soft: 'soft corals bear more nutrients and build little skeleton',
  'large-polyp': 'large-polyp corals like some nutrients and a steady middle alkalinity',
  'small-polyp': 'small-polyp corals want narrow, steady values and few nutrients',
  mixed: 'a mixed reef is kept where most corals agree',
  fish: 'fish alone bear wide ranges; steadiness still counts',
};

/**
 * Target range of a parameter (or salinity, practical salinity) for a kind of keeping, with its reason. All ranges
 * are common practice, no source; keepers differ. Alkalinity, small-polyp -> 7 to 9 dKH; salinity, mixed -> 34 to 36.
 */
export function targetFor(kind: TankKind, id: ParameterId): Target {
  const own = byKind[kind][id];
  return { range: own ?? limitsOf(id).usual, reason: reasons[kind], basis: ['practice'] };
}
