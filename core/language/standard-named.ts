import { classesIn } from './lexicon/classes.ts';
import type { Scanned } from './tokens.ts';

/** The salinity of the usual standard, and words behind it at most before it is called one. */
const STANDARD_PPT = 35;
const NEAR = 2;

/** Whether a 35 says which standard it is: "the 35 ppt calibration fluid". */
export function namesStandard({ tokens }: Scanned): boolean {
  return tokens.some(({ number }, at) => {
    const behind = tokens.slice(at + 1, at + 1 + NEAR).map(({ word }) => word);
    return number?.value === STANDARD_PPT && classesIn(behind).flat().includes('hardware.standard');
  });
}
