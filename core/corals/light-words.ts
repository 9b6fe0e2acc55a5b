import type { LightJudged } from './rules/light.ts';

/** A light verdict in a few words. */
export const whyWords: Readonly<Record<LightJudged['why'], string>> = {
  'too much': 'too bright',
  'too much to begin': 'too bright to begin with',
  'perhaps too much': 'perhaps too bright',
  'too little': 'too dim',
  fits: 'fits',
  unknown: 'not known',
};
