import { fixed } from '../../core/quantity/format.ts';
import { limitsOf } from '../../core/water/limits.ts';
import { onScale, readSalinity, type SalinityReading } from '../../core/water/salinity-reading.ts';
import { answer, type Answer } from '../answer.ts';
import { both, seawaterPpt } from './print.ts';

/** What a reading of a known water says of an instrument: how far it is off there, and what the tank would then be. */
export function checkKnown(
  shown: SalinityReading,
  known: 'fresh' | 'standard',
  tank: SalinityReading | undefined,
): Answer {
  const { scale, pair, written } = shown;
  const inGravity = scale === 'SG';
  const fresh = inGravity ? 1 : 0;
  const should = known === 'fresh' ? fresh : onScale(seawaterPpt, scale, pair);
  const off = written - should;
  const show = (value: number): string => (inGravity ? fixed(value, 4) : `${fixed(value, 1)} ${scale}`);
  const isRight = Math.abs(off) < (inGravity ? 0.0004 : 0.5);
  const water = known === 'fresh' ? 'fresh (RO) water' : 'the 35 ppt standard';
  const side = off > 0 ? 'too high' : 'too low';
  return answer({
    headline: isRight
      ? `It is right on ${water}: ${show(written)} where ${show(should)} is true.${known === 'fresh' ? ' That alone does not make it right at 35 ppt.' : ''}`
      : `It reads ${show(Math.abs(off))} ${side} on ${water}: set it on a 35 ppt standard, do not just add or take off a number.`,
    read: [],
    facts: [
      {
        label: `on ${water} it shows`,
        value: `${show(written)}, where ${show(should)} is true`,
        verdict: isRight ? 'right' : side,
      },
      ...(tank === undefined || isRight || tank.scale !== scale
        ? []
        : [{ label: 'the tank, if it is off by as much there', value: shifted(tank, off) }]),
    ],
    steps: [
      'Let standard and instrument stand at one temperature, clean prism or cell, and read the standard again.',
      'Set it so that it shows 35 ppt (1.0264, 53 mS/cm) on the standard.',
      'Where it cannot be set, or it drifts again in a week, replace it.',
      'Then read the tank anew, and change nothing in it before that.',
    ],
    cautions: [
      'Fluids go off once opened, and one made for conductivity misleads a refractometer: use a fresh one made for yours.',
    ],
    sources: ['fm83', 'practice'],
  });
}

/** The tank with the same error taken off; nothing made up beyond what a tank can be. */
function shifted({ written, scale, pair }: SalinityReading, off: number): string {
  const [low, high] = limitsOf('salinity').believable;
  const text = scale === 'SG' ? fixed(written - off, 4) : `${fixed(written - off, 2)} ${scale}`;
  const { practicalSalinity } = readSalinity(text, { field: 'reading', pair });
  return practicalSalinity < low || practicalSalinity > high
    ? 'beyond what a tank shows: read it anew'
    : `about ${both(practicalSalinity, pair)}`;
}
