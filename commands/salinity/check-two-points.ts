import { fixed } from '../../core/quantity/format.ts';
import { onScale, type SalinityReading } from '../../core/water/salinity-reading.ts';
import { Problem } from '../../core/problem.ts';
import { answer, type Answer } from '../answer.ts';
import { seawaterPpt } from './print.ts';
import { say } from '../../core/wording/say.ts';

/** As near as a hobby refractometer is read: ppt, and specific gravity. Common practice, no source. */
const NEAR = { ppt: 0.5, gravity: 0.0004 } as const;

/**
 * What an instrument shows on fresh water and on a 35 ppt standard: right, off by as much on both, or of the wrong slope.
 * Check: 2 and 35 ppt -> right at 35, slope (35 - 2)/35 = 0.943, so that 30 shown is (30 - 2)/0.943 = 29.7.
 *
 * @throws Problem where the two are on different scales.
 */
export function checkTwoPoints(fresh: SalinityReading, standard: SalinityReading): Answer {
  const { scale, pair } = standard;
  if (fresh.scale !== scale)
    throw new Problem(say('salinity.giveBothOnScale'), { field: 'fresh', limit: scale });
  const inGravity = scale === 'SG';
  const near = inGravity ? NEAR.gravity : NEAR.ppt;
  const zero = inGravity ? 1 : 0;
  const should = onScale(seawaterPpt, scale, pair);
  const [low, high] = [fresh.written - zero, standard.written - should];
  const show = (value: number): string => (inGravity ? fixed(value, 4) : `${fixed(value, 1)} ${scale}`);
  const slope = (standard.written - fresh.written) / (should - zero);
  const trueOf = (shown: number): number => zero + (shown - fresh.written) / slope;
  const [isRightLow, isRightHigh] = [Math.abs(low) < near, Math.abs(high) < near];
  const isShift = !isRightHigh && Math.abs(high - low) < near;
  const example = inGravity ? 1.023 : 30;
  const verdict = isRightHigh
    ? isRightLow
      ? 'It is right on both: trust it.'
      : `It is right where it matters, at 35 ppt; the ${show(Math.abs(low))} on fresh water is an error of the slope. Do not set it to zero.`
    : isShift
      ? `It is off by as much on both (${show(Math.abs(high))} too ${high > 0 ? 'high' : 'low'}): an offset. Set it on the 35 ppt standard, and both come right.`
      : `It is off by ${show(Math.abs(high))} at 35 ppt and by ${show(Math.abs(low))} on fresh water: the slope is wrong. Set it on the 35 ppt standard, and use it near 35 ppt only.`;
  return answer({
    headline: verdict,
    facts: [
      {
        label: 'on fresh (RO) water it shows',
        value: show(fresh.written),
        verdict: isRightLow ? 'right' : 'off',
      },
      {
        label: 'on the 35 ppt standard it shows',
        value: `${show(standard.written)}, where ${show(should)} is true`,
        verdict: isRightHigh ? 'right' : 'off',
      },
      ...(isRightLow && isRightHigh
        ? []
        : [
            {
              label: `where it shows ${show(example)}`,
              value: `about ${show(trueOf(example))} is true, on a straight line`,
            },
          ]),
    ],
    steps: [
      'Let standard, fresh water and instrument stand at one temperature, clean the prism, and read both again.',
      ...(isRightHigh
        ? []
        : ['Set it on the 35 ppt standard and not on fresh water, then read the tank anew.']),
      'Read weak water (a dip, a hospital tank) with another instrument, or correct it on that line.',
    ],
    working: [
      `slope = (${show(standard.written)} - ${show(fresh.written)}) / (${show(should)} - ${show(zero)}) = ${fixed(slope, 3)}`,
    ],
    cautions: [
      'Fluids go off once opened, and one made for conductivity misleads a refractometer: use a fresh one made for yours.',
    ],
    sources: ['fm83', 'practice'],
  });
}
