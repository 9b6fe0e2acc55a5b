import type { SourceCode } from '../sources.ts';

/** Lux per umol m-2 s-1 of a broad light source, and where it is from. */
export interface BroadSource {
  readonly luxPerPpfd: number;
  readonly source: SourceCode;
}

/**
 * CIE illuminants: factors worked out from their published spectra with the 1 nm V(lambda) table (400-700 nm
 * photons). A: tungsten; D: daylight; E: equal energy; FL: fluorescent tubes; HP1: sodium; LED-B: blue-pumped
 * white, B1 warm to B5 cool; LED-RGB1: three bands; LED-V1: violet-pumped.
 */
export const cieIlluminants = {
  A: { luxPerPpfd: 50.257, source: 'cie15' },
  D50: { luxPerPpfd: 56.197, source: 'cie15' },
  D65: { luxPerPpfd: 55.498, source: 'cie15' },
  E: { luxPerPpfd: 52.913, source: 'cie15' },
  FL2: { luxPerPpfd: 76.481, source: 'cie15' },
  FL4: { luxPerPpfd: 80.529, source: 'cie15' },
  FL7: { luxPerPpfd: 60.581, source: 'cie15' },
  FL11: { luxPerPpfd: 76.039, source: 'cie15' },
  HP1: { luxPerPpfd: 85.841, source: 'cie15' },
  'LED-B1': { luxPerPpfd: 67.067, source: 'cie15' },
  'LED-B2': { luxPerPpfd: 67.905, source: 'cie15' },
  'LED-B3': { luxPerPpfd: 69.75, source: 'cie15' },
  'LED-B4': { luxPerPpfd: 71.657, source: 'cie15' },
  'LED-B5': { luxPerPpfd: 69.401, source: 'cie15' },
  'LED-RGB1': { luxPerPpfd: 60.538, source: 'cie15' },
  'LED-V1': { luxPerPpfd: 53.078, source: 'cie15' },
} as const satisfies Record<string, BroadSource>;

/** Broad sources of Thimijan & Heins 1983, through later listings that cite it. Such lists differ by 2 to 6 %. */
export const listedSources = {
  blueSky: { luxPerPpfd: 52, source: 'th83' },
  metalHalide: { luxPerPpfd: 71, source: 'th83' },
} as const satisfies Record<string, BroadSource>;
