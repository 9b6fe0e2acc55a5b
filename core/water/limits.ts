import type { ParameterId } from './parameter.ts';

/** From the lower to the higher, in the parameter's own unit (parameter.ts). */
export type Range = readonly [low: number, high: number];

/** The most a level is moved in a day, in the parameter's own unit. */
export interface Pace {
  readonly up: number;
  readonly down: number;
  /** Upward in delicate small-polyp tanks. */
  readonly gentle?: number;
}

/**
 * The one table of what a level means: every command, card and sentence takes its bounds from here.
 *
 * All numbers are common practice, no source, unless a line says otherwise. Keepers differ, and the answers say so.
 */
export interface Limits {
  /** Outside it a reading is doubted before anything else: a slip of the pen or of the kit is likelier. */
  readonly believable: Range;
  /** Where mixed reefs are kept. Kinds of keeping differ: targets.ts. */
  readonly usual: Range;
  /** Outside the usual range by no more than this is the instrument's own error: nothing to act on. */
  readonly error?: number;
  readonly pace?: Pace;
  /** Between a day and a night this much is nothing to act on; only what swings by itself has one. */
  readonly swing?: number;
  /** At or beyond: what lives in the tank is harmed within a day or so. Where there is no such bound, none is made up. */
  readonly urgent?: { readonly low?: number; readonly high?: number };
}

const limits = {
  /**
   * Reefs occur at 28.7 to 40.4 (Guan et al. 2015, PLoS ONE 10:e0128831); believable leaves room for an accident, up to
   * where the scale ends (PSS-78: 42). The usual range is the widest that is kept, with soft corals; with stony ones it
   * is narrower (targets.ts). 1.025 passes on 25/25 (33.2 by fm83); on 20/20 (32.9) and 60F/60F (32.6) it is within the
   * error of a hobby refractometer or hydrometer, 1 ppt or 0.0008 SG. The pace is 0.001 in specific gravity a day, 1.33
   * ppt by fm83 (1.31 to 1.32 from 35 to 40, taken up), and half of that upward: a rise is harder on animals than a fall.
   */
  salinity: {
    believable: [20, 42],
    usual: [33, 36],
    error: 1,
    pace: { up: 0.66, down: 1.33 },
    urgent: { low: 28, high: 41 },
  },
  alkalinity: {
    believable: [3, 16],
    usual: [7, 11],
    pace: { up: 1, down: 1, gentle: 0.5 },
    urgent: { low: 5, high: 14 },
  },
  calcium: { believable: [250, 550], usual: [400, 450], pace: { up: 50, down: 50, gentle: 25 } },
  magnesium: { believable: [800, 1800], usual: [1250, 1400], pace: { up: 100, down: 100, gentle: 50 } },
  potassium: { believable: [200, 600], usual: [380, 420], pace: { up: 20, down: 20, gentle: 10 } },
  strontium: { believable: [1, 25], usual: [7, 10], pace: { up: 1, down: 1 } },
  bromide: { believable: [10, 120], usual: [60, 72], pace: { up: 5, down: 5 } },
  iodine: { believable: [0, 0.5], usual: [0.03, 0.08], pace: { up: 0.01, down: 0.01 } },
  nitrate: { believable: [0, 200], usual: [2, 20], pace: { up: 1, down: 1 } },
  phosphate: { believable: [0, 3], usual: [0.03, 0.1], pace: { up: 0.02, down: 0.02 } },
  /** A running reef shows none; urgent from what a hobby kit can tell from none. */
  ammonia: { believable: [0, 20], usual: [0, 0], urgent: { high: 0.25 } },
  nitrite: { believable: [0, 20], usual: [0, 0.1] },
  temperature: {
    believable: [15, 35],
    usual: [24, 27],
    pace: { up: 1, down: 1, gentle: 0.5 },
    swing: 1,
    urgent: { low: 19.5, high: 30 },
  },
  ph: { believable: [7, 9], usual: [7.8, 8.4], swing: 0.4, urgent: { low: 7.5, high: 8.7 } },
} as const satisfies Record<ParameterId, Limits>;

export function limitsOf(id: ParameterId): Limits {
  return limits[id];
}

export type Side = 'low' | 'high';

/** Guards the bounds against 8.4 - 7.4 = 1.0000000000000009. */
const EPSILON = 1e-9;

/** On which side of a range a value lies; undefined inside it. */
export function sideOf(value: number, [low, high]: Range): Side | undefined {
  if (value < low - EPSILON) return 'low';
  return value > high + EPSILON ? 'high' : undefined;
}

/** Whether a reading lies where it can be believed. Check: 1400 mg/L of magnesium yes, 20 dKH no. */
export function isBelievable(id: ParameterId, value: number): boolean {
  return sideOf(value, limitsOf(id).believable) === undefined;
}

/** On which side a level is urgent; undefined where it can wait. Check: 30 °C high, 29.9 °C none, 14 dKH high. */
export function urgentSide(id: ParameterId, value: number): Side | undefined {
  const { low = -Infinity, high = Infinity } = limitsOf(id).urgent ?? {};
  if (value <= low + EPSILON) return 'low';
  return value >= high - EPSILON ? 'high' : undefined;
}
