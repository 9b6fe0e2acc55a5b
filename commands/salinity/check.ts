import { z } from 'zod';
import { Problem } from '../../core/problem.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { readSalinity, type SalinityReading } from '../../core/water/salinity-reading.ts';
import { gravityPairs, type GravityPair } from '../../core/water/specific-gravity.ts';
import type { Answer } from '../answer.ts';
import { defineCommand } from '../command.ts';
import { quantityOption, textOption } from '../options.ts';
import { checkKnown } from './check-standard.ts';
import { checkProbe } from './check-probe.ts';
import { checkTwoPoints } from './check-two-points.ts';
import { checkRefractometer, withoutStandard } from './check-refractometer.ts';
import { say } from '../../core/wording/say.ts';

const pairs = Object.keys(gravityPairs) as readonly GravityPair[];

export const checkCommand = defineCommand({
  path: ['salinity', 'check'],
  summary:
    'What the tank really is: a refractometer against its standard, a conductivity against temperature',
  example: '/salinity check reading:1.026 standard:1.028',
  options: z.strictObject({
    reading: textOption('What the instrument shows in the tank, e.g. 1.026 or 45 mS/cm').optional(),
    fresh: textOption('What it shows in fresh (RO) water, e.g. 1.002').optional(),
    standard: textOption('What it shows on a 35 ppt standard, e.g. 1.028').optional(),
    temperature: quantityOption('temperature', 'Temperature of the tank’s water', 'temperature').optional(),
    with: z
      .enum(pairs)
      .meta({ description: 'Reference temperatures, of the specific gravity; 25/25 if left out' })
      .optional(),
  }),
  run: (input): Answer => {
    const at =
      input.temperature === undefined
        ? undefined
        : readQuantity('temperature', input.temperature, { field: 'temperature' }).value;
    const fresh = input.fresh === undefined ? undefined : readSalinity(input.fresh, { field: 'fresh' });
    if (input.reading === undefined) {
      const standard =
        input.standard === undefined
          ? undefined
          : readSalinity(input.standard, { field: 'standard', pair: input.with });
      if (fresh !== undefined && standard !== undefined) return checkTwoPoints(fresh, standard);
      const known = fresh ?? standard;
      if (known !== undefined)
        return checkKnown(known, fresh === undefined ? 'standard' : 'fresh', undefined);
      throw new Problem(say('salinity.whatDoesInstrumentShow'), {
        field: 'reading',
        hint: say('salinity.tankOn35Ppt'),
      });
    }
    const reading = readSalinity(input.reading, { field: 'reading', pair: input.with });
    if (fresh !== undefined) return checkKnown(fresh, 'fresh', reading);
    const standard =
      input.standard === undefined
        ? undefined
        : readSalinity(input.standard, { field: 'standard', pair: reading.pair });
    return checked(reading, standard, at);
  },
});

function checked(
  reading: SalinityReading,
  standard: SalinityReading | undefined,
  at: number | undefined,
): Answer {
  if (reading.scale === 'mS/cm') return checkProbe(reading, standard, at);
  if (standard === undefined) return withoutStandard(reading, at);
  return checkRefractometer(reading, standard, at);
}
