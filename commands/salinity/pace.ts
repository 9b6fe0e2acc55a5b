import { evenDays } from '../../core/change/day-plan.ts';
import { Problem } from '../../core/problem.ts';
import { fixed, significant } from '../../core/quantity/format.ts';
import { clean } from '../../core/quantity/clean.ts';
import { normaliseNumbers } from '../../core/quantity/number.ts';
import { gravityOf, salinityPacePpt } from '../../core/water/salinity-pace.ts';

/** Faster than this nothing is planned, ppt a day; own choice. */
const MOST_PPT = 3;

export interface Pace {
  readonly aDayPpt: number;
  /** "1.32 ppt a day (0.001 in specific gravity)" */
  readonly text: string;
  /** Beyond the usual limit in that direction. */
  readonly fast: boolean;
}

/** Reads "0.001" or "1 ppt", a day; left out, the usual limit in that direction, the same on every scale. */
export function readPace(text: string | undefined, raising: boolean): Pace {
  const usualPpt = raising ? salinityPacePpt.up : salinityPacePpt.down;
  if (text === undefined) return pace(usualPpt, usualPpt);
  const found = /^(\d*[.,]?\d+)\s*(sg|ppt|psu)?(?:\s*(?:a|per|\/)\s*day)?$/.exec(clean(text));
  const written = Number(normaliseNumbers(found?.[1] ?? '', 'pace', 'decimal'));
  const isGravity = found?.[2] === 'sg' || (found?.[2] === undefined && written < 0.02);
  const aDayPpt = isGravity ? written / gravityOf(1) : written;
  if (found !== null && aDayPpt > 0 && aDayPpt <= MOST_PPT) return pace(aDayPpt, usualPpt);
  throw new Problem('That is no pace for salinity.', {
    field: 'pace',
    given: text,
    limit: `up to ${MOST_PPT} ppt (${fixed(gravityOf(MOST_PPT), 4)} in specific gravity) a day`,
    hint: 'For example 1 ppt or 0.0005.',
  });
}

function pace(aDayPpt: number, usualPpt: number): Pace {
  const text = `${significant(aDayPpt, 3)} ppt a day (${fixed(gravityOf(aDayPpt), 4)} in specific gravity)`;
  return { aDayPpt, text, fast: aDayPpt > usualPpt * (1 + 1e-9) };
}

/** Salinity at the end of each day, in equal steps. */
export function dayLevels(nowS: number, goalS: number, { aDayPpt }: Pace): readonly number[] {
  return evenDays(nowS, goalS, aDayPpt);
}
