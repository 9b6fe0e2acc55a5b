import { printed, type OwnUnits } from '../../core/log/value.ts';
import { sentencesOf } from '../../core/words/sentence.ts';
import { shortLimits } from '../short/limits.ts';
import { urgentSteps } from './urgent-step.ts';
import type { Judged } from '../../core/water/assess.ts';
import { paceWords } from '../../core/water/pace-words.ts';
import { parameter, type ParameterId } from '../../core/water/parameter.ts';

/** What to do about a reading that is off, after "it is below (above) 7 dKH: ". Common practice, no source. */
interface Advice {
  readonly low: string;
  readonly high: string;
}

const advice: Readonly<Partial<Record<ParameterId, Advice>>> = {
  salinity: {
    low: `check the instrument before any other correction. Raise it slowly, ${paceWords('salinity').up}. It moves calcium and magnesium with it. Fresh water that came in by mistake (a top-off that ran on) only has to evaporate again. Keep the top-off off and add no salt for that.`,
    high: `check the instrument before any other correction. Lower it slowly, ${paceWords('salinity').down}. It moves calcium and magnesium with it.`,
  },
  temperature: {
    low: `check it with a second thermometer, then the heater, unplugged before you reach in. Warm up by ${paceWords('temperature').up}.`,
    high: `check it with a second thermometer, then heater, pumps and room. More movement at the surface first: warm water holds less oxygen. Cool by ${paceWords('temperature').down}, never with ice in the tank.`,
  },
  alkalinity: {
    low: `retest, then raise it slowly if it is confirmed, by ${paceWords('alkalinity').up} (/dose amount). Find out what the tank uses a day (/dose use).`,
    high: 'retest, cut or stop what adds it, limewater included, and let the tank use it up. Never acid into the tank.',
  },
  magnesium: {
    low: 'retest, then raise it slowly if it is confirmed. With little magnesium, calcium and alkalinity are hard to hold.',
    high: 'retest, stop dosing it, and let water changes bring it down.',
  },
  calcium: {
    low: 'retest, then raise it slowly if it is confirmed, well apart from the alkalinity part.',
    high: 'retest, stop dosing it, and let growth use it up.',
  },
  ph: {
    low: 'look at the hour first (lowest before the lights come on), then air the room and move the surface more. Do not chase it with chemicals.',
    high: 'calibrate the probe, then look for limewater or soda ash going in too fast. Do not chase it with chemicals.',
  },
  nitrate: {
    low: 'retest, and feed a little more before dosing any.',
    high: 'retest, find what brings it in. Let water changes bring it down slowly (/waterchange goal).',
  },
  phosphate: {
    low: 'retest, and feed a little more before dosing any.',
    high: 'retest, find what brings it in, and let it come down slowly. A sudden fall harms more than the number.',
  },
  nitrite: {
    low: 'nothing to do.',
    high: 'test ammonia too. In sea water nitrite itself harms far less than ammonia does. It means the filter has not caught up, and it makes nitrate kits read too high.',
  },
  ammonia: {
    low: 'nothing to do.',
    high: 'retest with a fresh sample, and act at once if it is confirmed: a running reef shows none.',
  },
};

const other: Advice = {
  low: 'retest, then raise it slowly if it is confirmed.',
  high: 'retest, find what brings it in, and let it come down slowly.',
};

/** The steps about one reading that is not fine, the first with its number. */
export function stepsFor(judged: Judged, units: OwnUnits): readonly string[] {
  const { parameter: id, value, verdict, range } = judged;
  const { kitResolution } = parameter(id);
  const named = namedWith(judged, units);
  if (verdict === 'urgent') return urgentSteps(id, value, named);
  if (verdict === 'doubtful') return doubt(judged, units);
  const side = verdict === 'low' ? 'low' : 'high';
  if ((id === 'nitrate' || id === 'phosphate') && side === 'low' && value < kitResolution) {
    return [
      `${named} on a kit means below its limit, not none.`,
      'Retest, and feed a little more before dosing any.',
    ];
  }
  const bound = printed(id, side === 'low' ? range[0] : range[1], units);
  const place = side === 'low' ? 'below' : 'above';
  const [act = '', ...more] = sentencesOf((advice[id] ?? other)[side]);
  const whole = `${named} is ${place} ${bound}: ${act}`;
  return [whole.length <= shortLimits.step ? whole : `${named}: ${act}`, ...more];
}

/** "calcium 380 mg/L (457 mg/L at salinity 35)": as read, and as it is judged where salinity is off. */
export function namedWith({ parameter: id, value, at35 }: Judged, units: OwnUnits): string {
  const scaled = at35 === undefined ? '' : ` (${printed(id, at35, units)} at salinity 35)`;
  return `${parameter(id).label} ${printed(id, value, units)}${scaled}`;
}

/** How a reading that is hard to believe is checked, where that is not another kit. */
const doubts: Readonly<Partial<Record<ParameterId, string>>> = {
  salinity:
    'Measure salinity again with an instrument checked against a 35 ppt standard: all else hangs on it.',
};

function doubt(judged: Judged, units: OwnUnits): readonly string[] {
  const named = namedWith(judged, units);
  const again = doubts[judged.parameter];
  if (again !== undefined) return [`${named} is hard to believe.`, again];
  return [
    `Retest ${parameter(judged.parameter).label} with a fresh sample and, if you can, another kit.`,
    `${named} is more likely a test error. Do not dose anything to balance it.`,
  ];
}
