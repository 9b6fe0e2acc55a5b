import { withRemark } from '../../core/water/salinity-remark.ts';
import type { Answer } from '../answer.ts';

/** A first line that says of salinity that it is off. */
const SAID = /\bsalinity\b[^;]{0,40}\b(?:low|high|off|below|above)\b|\b(?:low|high) salinity\b/i;

/** The answer with a remark on the tank's salinity before its first line, unless that says it already. */
export function remarkFirst(remark: string | undefined, given: Answer): Answer {
  return SAID.test(given.headline) ? given : { ...given, headline: withRemark(remark, given.headline) };
}
