import { Problem } from '../../core/problem.ts';
import { fixed } from '../../core/quantity/format.ts';
import { conductivityMScm, salinityFromConductivity } from '../../core/water/conductivity.ts';
import type { SalinityReading } from '../../core/water/salinity-reading.ts';
import { answer, type Answer } from '../answer.ts';
import { asRead, both, ppt, seawaterPpt } from './print.ts';
import { salinityRemark } from '../../core/water/salinity-remark.ts';
import { opened, withSalinity } from '../short/remark-first.ts';
import { say } from '../../core/wording/say.ts';

/** Temperatures shown when the member names none. */
const shownTempsC = [20, 26] as const;

/** A conductivity, with and without temperature compensation, and corrected by a 35 ppt standard where one was read. */
export function checkProbe(
  reading: SalinityReading,
  standard: SalinityReading | undefined,
  at: number | undefined,
): Answer {
  const full = conductivityMScm(seawaterPpt, 25);
  const factor = standard === undefined ? 1 : factorOf(standard, full);
  const mScm = reading.written * factor;
  const compensated = salinityFromConductivity(mScm, 25);
  const temps = at === undefined ? shownTempsC : [at];
  const plain = temps.map((tempC) => ({ tempC, s: salinityFromConductivity(mScm, tempC) }));
  const isFull = Math.abs(compensated - seawaterPpt) < 0.5;
  const shown = `${fixed(mScm, 2)} mS/cm`;
  const main = `${shown} is ${isFull ? '' : 'not 35 ppt but '}${both(compensated, '25/25')} if the probe corrects to 25 °C; 35 ppt shows ${fixed(full, 0)} mS/cm.`;
  const uncorrected = plain.map(({ tempC, s }) => `${ppt(s)} at ${fixed(tempC, 1)} °C`).join(', ');
  const given = answer({
    headline: '',
    read: [
      `probe ${asRead(reading)}`,
      ...reading.notes.filter((note) => !note.startsWith('conductivity taken')),
      ...(at === undefined
        ? ['no temperature given: is the reading compensated to 25 °C, and how warm is the water?']
        : [`water at ${fixed(at, 1)} °C`]),
      ...(standard === undefined
        ? []
        : [`35 ppt standard shows ${asRead(standard)}, so readings are multiplied by ${fixed(factor, 3)}`]),
    ],
    steps: [
      'Find out whether the probe compensates for temperature, and note the temperature of the water.',
      'Clean it, shake off bubbles and set it with a 53 mS/cm standard at the temperature on the bottle.',
      'Read the tank again, and check with a second instrument, before you change the salinity.',
    ],
    working: [
      'Practical salinity scale of 1978, from the conductivity and the temperature.',
      'The unit is mS/cm; 53 mS/cm is 53000 µS/cm.',
    ],
    cautions: ['One degree of wrong temperature moves the result by about 0.7 ppt.'],
    sources: ['fm83', 'practice'],
  });
  const plainly = {
    label: 'if it does not correct',
    value: uncorrected,
    sentence: `If not, ${uncorrected}.`,
  };
  return opened(
    withSalinity(salinityRemark(compensated), [{ label: 'as asked', value: main }, plainly]),
    given,
  );
}

function factorOf(standard: SalinityReading, full: number): number {
  const factor = standard.scale === 'mS/cm' ? full / standard.written : Number.NaN;
  if (factor >= 0.8 && factor <= 1.25) return factor;
  throw new Problem(say('salinity.probeTooFarFrom'), {
    field: 'standard',
    given: asRead(standard),
    limit: say('salinity.limitProbe'),
  });
}
