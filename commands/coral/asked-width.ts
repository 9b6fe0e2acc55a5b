import type { CoralEntry } from '../../core/corals/entry.ts';
import { widthOfHeads } from '../../core/corals/heads.ts';
import { cm } from '../../core/corals/say.ts';
import { inRange, Problem } from '../../core/problem.ts';
import { clean } from '../../core/quantity/clean.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { say } from '../../core/wording/say.ts';
import { textOption } from '../options.ts';

/** Smallest and largest coral placed, cm: this project's own choice. */
const WIDTH_CM = { min: 0.3, max: 300 } as const;

export function widthOption() {
  return textOption('How wide it is when open, e.g. 8 cm or 3 in; or its heads, e.g. 4 heads', { max: 40 });
}

/** The open width, from a length or from heads. @throws Problem for neither, or outside `WIDTH_CM`. */
export function askedWidth(
  given: string,
  entry: CoralEntry,
): { readonly diameterCm: number; readonly read: string } {
  const heads = /^(\d{1,4}|one|a|single)\s*-?\s*(?:heads?|polyps?)$/.exec(clean(given))?.[1];
  if (heads !== undefined) {
    const count = /\d/.test(heads) ? Number(heads) : 1;
    const { diameterCm, basis } = widthOfHeads(entry, count);
    const words = count === 1 ? '1 head' : `${count} heads`;
    return { diameterCm, read: `${words}, taken as about ${cm(diameterCm)} wide when open (${basis})` };
  }
  if (/^[\d.,\s]+$/.test(given)) {
    throw new Problem(say('coral.whichUnitOfSize'), {
      field: 'size',
      given,
      choices: ['cm', 'in', 'heads'].map((unit) => `${given.trim()} ${unit}`),
    });
  }
  const { value } = readQuantity('length', given, { field: 'size' });
  const { min, max } = WIDTH_CM;
  return { diameterCm: inRange('size', value, min, max, 'cm'), read: `${cm(value)} wide when open` };
}
