import type { CoralEntry } from '../../core/corals/entry.ts';
import {
  lampBand,
  lampStrengths,
  type CoralLight,
  type LampBand,
  type LampStrength,
} from '../../core/corals/light-need.ts';
import { Problem } from '../../core/problem.ts';
import { counted, fixed } from '../../core/quantity/format.ts';
import { settingTable } from './range-plan.ts';
import type { RangePart } from './range-view.ts';
import { say } from '../../core/wording/say.ts';

/**
 * Without a reading: the range alone, or where to try such a lamp. No PAR follows from it.
 *
 * @throws Problem asking for the class of the lamp where only its setting is known.
 */
export function unmeasuredPart(
  entry: CoralEntry,
  need: CoralLight,
  settingPercent: number | undefined,
  lamp: LampStrength | undefined,
): RangePart {
  if (lamp !== undefined && entry.photosynthetic) return lampPart(entry, need, settingPercent, lamp);
  if (settingPercent !== undefined && entry.photosynthetic) {
    throw new Problem(say('light.settingAloneSaysNothing'), {
      field: 'lamp',
      hint: say('light.parReadingAtIts'),
      choices: lampStrengths,
    });
  }
  const { lowPpfd, highPpfd, startPpfd, rangeBasis, weeks } = need;
  const name = entry.names.common[0];
  return {
    headline: entry.photosynthetic
      ? `${name}: begin near ${startPpfd} PAR, and go up within ${lowPpfd} to ${highPpfd} PAR over weeks (${rangeBasis}).`
      : `${name} lives by food and needs no light; it is kept at up to ${highPpfd} PAR (${rangeBasis}).`,
    read: ['no reading given'],
    facts: [],
    steps: [
      ...(weeks > 0
        ? [
            `Raise by about ${need.raisePercentAWeek} % a week: about ${counted(weeks, 'week')} to the middle of its range.`,
          ]
        : []),
      ...(entry.photosynthetic ? METER_STEPS : [need.tooMuch.action, 'Mind its food (/coral feed).']),
    ],
    working: [],
    cautions: [],
  };
}

const METER_STEPS = [
  'Borrow a PAR meter and give a reading with the lamp setting: then I can say where it stands today.',
  'Without a meter give the lamp setting and its class (lamp:weak or strong), for a first try.',
] as const;

function lampPart(
  entry: CoralEntry,
  need: CoralLight,
  settingPercent: number | undefined,
  lamp: LampStrength,
): RangePart {
  const band = lampBand(lamp);
  const { lowPercent, highPercent, basis, doubt } = band;
  const middle = (lowPercent + highPercent) / 2;
  const from = settingPercent === undefined ? lowPercent : Math.min(settingPercent, lowPercent);
  const table = settingTable(from, middle, need.raisePercentAWeek);
  const stated = settingPercent === undefined ? undefined : `${fixed(settingPercent, 1)} %`;
  return {
    headline: `${headStart(stated, settingPercent, band)} A ${lamp} lamp is tried at ${lowPercent} to ${highPercent} %: a wide band, and no PAR follows from it.`,
    read: [
      'no reading given, so nothing is measured',
      `a ${lamp} lamp${stated === undefined ? '' : ` at ${stated}`}`,
    ],
    facts: [{ label: 'setting to try', value: `${lowPercent} to ${highPercent} % (${basis})` }],
    ...(table === undefined ? {} : { table }),
    steps: [
      `A new ${entry.names.common[0]} begins with the lamp at ${fixed(from, 0)} %, ${placeWords(need)}.`,
      'Open and of good colour for two weeks before each step; pale or shut: go back the same day.',
      'Borrow a PAR meter before you go above the middle of the band.',
    ],
    working: [],
    cautions: [
      doubt,
      'The lamp lights every coral below it: if only this one has too much, lower or shade this one instead.',
    ],
  };
}

function headStart(
  stated: string | undefined,
  settingPercent: number | undefined,
  { lowPercent, highPercent }: LampBand,
): string {
  if (stated === undefined || settingPercent === undefined) return `Begin at ${lowPercent} %.`;
  if (settingPercent > highPercent) {
    return `${stated} is above that band: dim to ${lowPercent} % for a new coral today.`;
  }
  if (settingPercent < lowPercent) return `${stated} is below that band: go up slowly.`;
  return `${stated} is within that band: begin at its low end, ${lowPercent} %.`;
}

/** Shade lovers low, the rest by their start: project rule. */
function placeWords({ startPpfd }: CoralLight): string {
  if (startPpfd <= DIM_START) return 'low in the tank or in half shade';
  return startPpfd <= BRIGHT_START ? 'at low to middle height' : 'at middle height first, higher later';
}

/** umol m-2 s-1 where a piece begins: project rule. */
const DIM_START = 75;
const BRIGHT_START = 140;
