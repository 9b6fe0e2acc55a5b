import { evenDays } from '../../core/change/day-plan.ts';
import { Problem } from '../../core/problem.ts';
import { fixed } from '../../core/quantity/format.ts';
import { clean } from '../../core/quantity/clean.ts';
import { roundedDown } from '../../core/quantity/portion.ts';
import { normaliseNumbers } from '../../core/quantity/number.ts';
import { gravityOf, salinityPacePpt } from '../../core/water/salinity-pace.ts';
import { onScale, type SalinityReading } from '../../core/water/salinity-reading.ts';
import { salinityFromSpecificGravity } from '../../core/water/specific-gravity.ts';
import { say } from '../../core/wording/say.ts';

/** Faster than this nothing is planned, a day; own choice. */
const most = { SG: 0.003, ppt: 3 } as const;
/** The last digit a level of a plan is printed with: a step smaller than that cannot be read. */
const digitOf = { SG: 0.0001, ppt: 0.01 } as const;

export interface Pace {
  readonly scale: 'SG' | 'ppt';
  readonly aDay: number;
  /** "0.001 SG a day" */
  readonly text: string;
  /** Beyond the usual limit in that direction. */
  readonly fast: boolean;
}

/** Reads "0.001" or "1 ppt", a day; left out, the usual limit in that direction, on the scale of the reading. */
export function readPace(text: string | undefined, now: SalinityReading, raising: boolean): Pace {
  const usualPpt = raising ? salinityPacePpt.up : salinityPacePpt.down;
  const usual = { SG: gravityOf(usualPpt), ppt: usualPpt } as const;
  if (text === undefined) {
    const scale = now.scale === 'SG' ? 'SG' : 'ppt';
    return pace(scale, usual[scale], usual[scale]);
  }
  const found = /^(\d*[.,]?\d+)\s*(sg|ppt|psu)?(?:\s*(?:a|per|\/)\s*day)?$/.exec(clean(text));
  const aDay = Number(normaliseNumbers(found?.[1] ?? '', 'pace', 'decimal'));
  const scale = found?.[2] === 'sg' || (found?.[2] === undefined && aDay < 0.02) ? 'SG' : 'ppt';
  if (found !== null && aDay >= digitOf[scale] && aDay <= most[scale]) return pace(scale, aDay, usual[scale]);
  throw new Problem(say('salinity.noPaceSalinity'), {
    field: 'pace',
    given: text,
    limit: say('salinity.sgOrPptDay', { SG: digitOf.SG, SG2: most.SG, ppt: digitOf.ppt, ppt2: most.ppt }),
    hint: say('salinity.example0001Or'),
  });
}

function pace(scale: Pace['scale'], mostADay: number, usual: number): Pace {
  const aDay = roundedDown(mostADay, digitOf[scale]);
  return { scale, aDay, text: `${fixed(aDay, 4)} ${scale} a day`, fast: aDay > usual * (1 + 1e-9) };
}

/** Salinity at the end of each day, in equal steps on the scale of the pace. */
export function dayLevels(now: SalinityReading, goalS: number, { scale, aDay }: Pace): readonly number[] {
  if (scale === 'ppt') return evenDays(now.practicalSalinity, goalS, aDay, digitOf.ppt);
  const { pair } = now;
  const toSg = (s: number): number => onScale(s, 'SG', pair);
  const levels = evenDays(toSg(now.practicalSalinity), toSg(goalS), aDay, digitOf.SG);
  return levels.map((sg, day) => (day === levels.length - 1 ? goalS : salinityFromSpecificGravity(sg, pair)));
}
