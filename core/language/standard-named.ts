import { met } from './met.ts';
import type { Scanned } from './tokens.ts';

/** The salinity of the usual standard (common practice, no source), and in how many words behind it is called one (own choice). */
const STANDARD_PPT = 35;
const NEAR = 2;

/** Whether a 35 says which standard it is: "the 35 ppt calibration fluid". */
export function namesStandard(scanned: Scanned): boolean {
  const { tokens } = scanned;
  return tokens.some(({ number }, at) => {
    const behind = tokens.slice(at + 1, at + 1 + NEAR);
    return number?.value === STANDARD_PPT && met({ ...scanned, tokens: behind }, 'hardware.standard');
  });
}
