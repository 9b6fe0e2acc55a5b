import type { SourceCode } from '../sources.ts';
import { cieIlluminants, listedSources } from './illuminant.ts';
import { gaussianBand, luxPerPpfd, mixLuxPerPpfd, planckian, type Span } from './lux.ts';

/** A kind of lamp as members name it, and the lux per umol m-2 s-1 it can have. */
export interface Lamp {
  readonly name: string;
  readonly luxPerPpfd: Span;
  /** What the two ends are. */
  readonly basis: string;
  readonly sources: readonly SourceCode[];
}

const cie = cieIlluminants;
const royalBlue = luxPerPpfd(gaussianBand(450, 20));
const blue = luxPerPpfd(gaussianBand(470, 20));
const violet = luxPerPpfd(gaussianBand(420, 20));

/** 70 % royal blue, 10 % violet, 20 % daylight white, by photons. = 16.35. */
const deepBlueMix = mixLuxPerPpfd([
  { photonShare: 0.7, luxPerPpfd: royalBlue },
  { photonShare: 0.1, luxPerPpfd: violet },
  { photonShare: 0.2, luxPerPpfd: cie.D65.luxPerPpfd },
]);
/** Half royal blue, half cool white, by photons. = 38.37. */
const evenMix = mixLuxPerPpfd([
  { photonShare: 0.5, luxPerPpfd: royalBlue },
  { photonShare: 0.5, luxPerPpfd: cie['LED-B5'].luxPerPpfd },
]);

const whiteHigh = cie['LED-B4'].luxPerPpfd;

/**
 * The kinds of lamp, each with the lowest and the highest factor it is likely to have. Ends are computed from model
 * bands or taken from `illuminant.ts`; which mixes stand for "blue and white" is this project's own choice.
 */
export const lamps = {
  daylight: {
    name: 'daylight',
    luxPerPpfd: { low: listedSources.blueSky.luxPerPpfd, high: cie.D50.luxPerPpfd },
    basis: 'blue sky to CIE D50 daylight',
    sources: ['th83', 'cie15'],
  },
  white: {
    name: 'white LEDs',
    luxPerPpfd: { low: cie['LED-V1'].luxPerPpfd, high: whiteHigh },
    basis: 'CIE white LEDs, violet-pumped to blue-pumped',
    sources: ['cie15'],
  },
  'blue-white': {
    name: 'bluish LEDs, up to half white',
    luxPerPpfd: { low: deepBlueMix, high: evenMix },
    basis: '20 % white with blue and violet to half white and half royal blue, by photons',
    sources: ['cie', 'cie15', 'si19'],
  },
  blue: {
    name: 'blue LEDs alone',
    luxPerPpfd: { low: royalBlue, high: blue },
    basis: 'a band at 450 nm to a band at 470 nm, each 20 nm wide',
    sources: ['cie', 'si19'],
  },
  led: {
    name: 'LEDs of unknown mix',
    luxPerPpfd: { low: royalBlue, high: whiteHigh },
    basis: 'royal blue alone to white alone',
    sources: ['cie', 'cie15', 'si19'],
  },
  halide: {
    name: 'metal halide',
    luxPerPpfd: { low: luxPerPpfd(planckian(20_000)), high: listedSources.metalHalide.luxPerPpfd },
    basis: 'a bluish bulb taken as a black body of 20,000 K, to the listed white metal halide',
    sources: ['cie', 'th83'],
  },
  fluorescent: {
    name: 'white fluorescent tubes',
    luxPerPpfd: { low: cie.FL7.luxPerPpfd, high: cie.FL4.luxPerPpfd },
    basis: 'CIE daylight tube to warm white tube',
    sources: ['cie15'],
  },
} as const satisfies Record<string, Lamp>;

export type LampId = keyof typeof lamps;

export const lampIds = Object.keys(lamps) as [LampId, ...LampId[]];

export function lamp(id: LampId): Lamp {
  return lamps[id];
}

/** The span over every kind of lamp: what is known when none is named. */
export const anyLampLuxPerPpfd: Span = {
  low: Math.min(...lampIds.map((id) => lamps[id].luxPerPpfd.low)),
  high: Math.max(...lampIds.map((id) => lamps[id].luxPerPpfd.high)),
};
