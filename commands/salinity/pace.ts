import { evenDays } from '../../core/change/day-plan.ts';
import { Problem } from '../../core/problem.ts';
import { fixed } from '../../core/quantity/format.ts';
import { clean } from '../../core/quantity/clean.ts';
import { roundedDown } from '../../core/quantity/portion.ts';
import { normaliseNumbers } from '../../core/quantity/number.ts';
import { usualSalinityPace as usual } from '../../core/water/salinity-pace.ts';
import { onScale, type SalinityReading } from '../../core/water/salinity-reading.ts';
import { salinityFromSpecificGravity } from '../../core/water/specific-gravity.ts';

const most = { SG: 0.003, ppt: 3 } as const;
/** The last digit a level is printed with: a step smaller than that cannot be read. */
const digitOf = { SG: 0.0001, ppt: 0.1 } as const;

export interface Pace {
  readonly scale: 'SG' | 'ppt';
  readonly aDay: number;
  /** "0.001 SG a day" */
  readonly text: string;
  readonly fast: boolean;
}

/** Reads "0.001" or "1 ppt", a day; left out, the usual limit on the scale of the reading, half of it for raising. */
export function readPace(text: string | undefined, now: SalinityReading, raising: boolean): Pace {
  if (text === undefined) {
    const scale = now.scale === 'SG' ? 'SG' : 'ppt';
    return pace(scale, usual[scale] * (raising ? usual.raisingPart : 1));
  }
  const found = /^(\d*[.,]?\d+)\s*(sg|ppt|psu)?(?:\s*(?:a|per|\/)\s*day)?$/.exec(clean(text));
  const aDay = Number(normaliseNumbers(found?.[1] ?? '', 'pace', 'decimal'));
  const scale = found?.[2] === 'sg' || (found?.[2] === undefined && aDay < 0.02) ? 'SG' : 'ppt';
  if (found !== null && aDay >= digitOf[scale] && aDay <= most[scale]) return pace(scale, aDay);
  throw new Problem('That is no pace for salinity.', {
    field: 'pace',
    given: text,
    limit: `${digitOf.SG} to ${most.SG} SG or ${digitOf.ppt} to ${most.ppt} ppt a day`,
    hint: 'For example 0.001 or 1 ppt.',
  });
}

function pace(scale: Pace['scale'], asked: number): Pace {
  const aDay = roundedDown(asked, digitOf[scale]);
  return { scale, aDay, text: `${fixed(aDay, 4)} ${scale} a day`, fast: aDay > usual[scale] };
}

/** Salinity at the end of each day, in equal steps on the scale of the pace. */
export function dayLevels(now: SalinityReading, goalS: number, { scale, aDay }: Pace): readonly number[] {
  if (scale === 'ppt') return evenDays(now.practicalSalinity, goalS, aDay, digitOf.ppt);
  const { pair } = now;
  const toSg = (s: number): number => onScale(s, 'SG', pair);
  const levels = evenDays(toSg(now.practicalSalinity), toSg(goalS), aDay, digitOf.SG);
  return levels.map((sg, day) => (day === levels.length - 1 ? goalS : salinityFromSpecificGravity(sg, pair)));
}
