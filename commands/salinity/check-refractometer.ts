import { Problem } from '../../core/problem.ts';
import { fixed } from '../../core/quantity/format.ts';
import { correctRefractometer } from '../../core/water/refraction.ts';
import { onScale, readSalinity, type SalinityReading } from '../../core/water/salinity-reading.ts';
import { eos80Range } from '../../core/water/seawater.ts';
import { targetFor } from '../../core/water/targets.ts';
import { hydrometerReading, salinityFromHydrometer } from '../../core/water/specific-gravity.ts';
import { answer, type Answer, type Fact } from '../answer.ts';
import { asRead, both, gravity, ppt, remarkOn, seawaterPpt, understood } from './print.ts';
import { salinityRemark } from '../../core/water/salinity-remark.ts';
import { salinityPacePpt } from '../../core/water/salinity-pace.ts';
import { remarkFirst } from '../short/remark-first.ts';
import { say } from '../../core/wording/say.ts';

const swingArm =
  'A swing-arm hydrometer can be 0.001 to 0.005 off either way and traps bubbles; do not average it with another instrument.';
const fluids =
  'Some standards are made for conductivity only and mislead a refractometer: use one made for refractometers.';

/** The tank's salinity from a refractometer that is right on fresh water but not on its standard; `at` in °C. */
export function checkRefractometer(
  reading: SalinityReading,
  standard: SalinityReading,
  at: number | undefined,
): Answer {
  if (standard.scale !== reading.scale || reading.scale === 'mS/cm') {
    throw new Problem(say('salinity.giveBothReadingsOn'), {
      field: 'standard',
      given: asRead(standard),
      limit: reading.scale,
    });
  }
  const { pair, scale } = reading;
  const inGravity = scale === 'SG';
  const standardTrue = onScale(seawaterPpt, scale, pair);
  const { corrected, errorAtStandard } = correctRefractometer(reading.written, {
    scale: inGravity ? 'specific gravity' : 'ppt',
    standardReading: standard.written,
    standardTrue,
  });
  const show = (value: number): string => (inGravity ? gravity(value) : `${fixed(value, 1)} ${scale}`);
  const trueS = inGravity
    ? readSalinity(String(corrected), { field: 'reading', pair }).practicalSalinity
    : readSalinity(`${corrected} ${scale}`, { field: 'reading' }).practicalSalinity;
  const [low, high] = targetFor('mixed', 'salinity').range;
  const right = Math.abs(errorAtStandard) < (inGravity ? 0.0003 : 0.3);
  const given = answer({
    headline: right
      ? `The instrument is right on its standard, so the tank is ${both(trueS, pair)}.`
      : `The tank is about ${both(trueS, pair)}, not ${show(reading.written)}: the instrument reads ${size(Math.abs(errorAtStandard), inGravity)} too ${errorAtStandard > 0 ? 'high' : 'low'} at 35 ppt.`,
    read: [
      ...understood('tank', reading),
      `35 ppt standard shows ${show(standard.written)}`,
      'taken as right on fresh water, on a straight line between the two',
    ],
    facts: [
      { label: 'the standard should show', value: `${show(standardTrue)}${inGravity ? ` on ${pair}` : ''}` },
      {
        label: 'it shows',
        value: show(standard.written),
        verdict: right ? 'right' : errorAtStandard > 0 ? 'too high' : 'too low',
      },
      { label: 'tank, corrected', value: both(trueS, pair) },
    ],
    steps: [
      ...(right
        ? []
        : [
            'Set the refractometer on the 35 ppt standard, not on fresh water: zero can be right and the slope wrong.',
          ]),
      `Rinse it with tank water, wait half a minute, and read the tank again, with the standard ${atOne(at)}.`,
      'Leave the tank as it is until that reading.',
      ...(trueS < low
        ? [
            `If it is still near ${ppt(trueS)}, raise it by at most ${salinityPacePpt.up} ppt a day. It is no emergency.`,
          ]
        : []),
      ...(trueS > high
        ? [`If it is still near ${ppt(trueS)}, lower it by at most ${salinityPacePpt.down} ppt a day.`]
        : []),
    ],
    working: [
      inGravity
        ? `true = 1 + (reading - 1) x (true standard - 1)/(shown standard - 1) = 1 + ${fixed(reading.written - 1, 4)} x ${fixed(standardTrue - 1, 4)}/${fixed(standard.written - 1, 4)} = ${show(corrected)}`
        : `true = reading x true standard/shown standard = ${fixed(reading.written, 1)} x ${fixed(standardTrue, 1)}/${fixed(standard.written, 1)} = ${show(corrected)}`,
    ],
    cautions: [swingArm, fluids],
    sources: ['fm83', 'qf95', 'practice'],
  });
  return remarkFirst(salinityRemark(trueS), given);
}

function size(error: number, inGravity: boolean): string {
  return inGravity ? fixed(error, 4) : `${fixed(error, 1)} ppt`;
}

/** Both liquids are read at one temperature, or the straight line between them does not hold. */
function atOne(at: number | undefined): string {
  return at === undefined ? 'at one temperature' : `at ${fixed(at, 1)} °C`;
}

/** What a specific gravity is where the instrument is a glass hydrometer afloat in water of `at` °C. */
function inGlass({ scale, written, pair }: SalinityReading, at: number | undefined): readonly Fact[] {
  if (scale !== 'SG' || at === undefined || written > hydrometerReading(eos80Range.salinityMax, pair, at))
    return [];
  const s = salinityFromHydrometer(written, pair, at);
  return [{ label: `if it is a glass hydrometer, in water of ${fixed(at, 1)} °C`, value: both(s, pair) }];
}

/** A reading with no standard beside it: what it says, and how to find out whether it is so; `at` in °C. */
export function withoutStandard(reading: SalinityReading, at: number | undefined): Answer {
  const { pair } = reading;
  const given = answer({
    headline: `If the instrument is right, the tank is ${both(reading.practicalSalinity, pair)}; only a 35 ppt standard can tell.`,
    read: understood('tank', reading),
    facts: [
      {
        label: 'a 35 ppt standard should show',
        value: `${gravity(onScale(seawaterPpt, 'SG', pair))} on ${pair}, 53.1 mS/cm at 25 °C`,
      },
      ...inGlass(reading, at),
    ],
    steps: [
      `Read a 35 ppt standard with the same instrument, ${atOne(at)}, and give what it shows as standard.`,
      'Change nothing in the tank before that.',
    ],
    cautions: [swingArm, fluids, 'An instrument set to zero on fresh water can still be wrong at 35 ppt.'],
    sources: ['fm83', 'practice'],
  });
  return remarkFirst(remarkOn(reading), given);
}
