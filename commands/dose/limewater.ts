import { z } from 'zod';
import { capacity, saturationGL } from '../../core/dosing/limewater.ts';
import { Problem } from '../../core/problem.ts';
import { fixed, significant, span, volume, volumeAsWritten } from '../../core/quantity/format.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { answer, type Answer } from '../answer.ts';
import { defineCommand } from '../command.ts';
import { quantityOption, textOption } from '../options.ts';
import { splitADay } from './a-day.ts';
import { askedCompound, askedWater } from './asked.ts';
import { limeStrength } from './lime-strength.ts';
import { levelSpoons } from './spoons.ts';
import { type Limewater, limewaterCare, limewaterSources, topOff } from './top-off.ts';
import { say } from '../../core/wording/say.ts';

/** °C of limewater where nothing is said: the room's; own choice. */
const USUAL_C = 25;

export const limewaterCommand = defineCommand({
  path: ['dose', 'limewater'],
  summary: 'How much lime a batch holds, and whether lime in top-off is enough',
  example: '/dose limewater amount:1 gal volume:90 gal goal:0.6 dKH',
  options: z.strictObject({
    amount: quantityOption('volume', 'Top-off a day, e.g. 4 L; without a tank volume, the size of the batch'),
    powder: textOption('What is put in: does it dissolve, e.g. 2 tsp or 7 g').optional(),
    per: quantityOption('volume', 'The water it is put into; the batch if left out').optional(),
    daily: quantityOption('volume', 'Evaporation a day, with powder: what it brings').optional(),
    volume: quantityOption('volume', 'Net water of the whole system', 'volume').optional(),
    goal: quantityOption('alkalinity', 'Alkalinity the tank uses a day, e.g. 0.6 dKH').optional(),
    // The vessel stands in the room, so the tank's own temperature says nothing of it.
    temperature: quantityOption('temperature', 'Of the limewater; 25 °C if left out').optional(),
  }),
  fills: ({ goal }) => goal !== undefined, // without a use to cover it is a batch in a vessel
  run: (input): Answer => {
    const litres = readQuantity('volume', input.amount, { field: 'amount' });
    const warm =
      input.temperature === undefined
        ? undefined
        : readQuantity('temperature', input.temperature, { field: 'temperature' });
    const tempC = warm?.value ?? USUAL_C;
    const strength = saturationGL(tempC);
    const notes = warm?.notes ?? [
      `no temperature of the limewater given, so ${USUAL_C} °C; cooler water holds more lime`,
    ];
    const asked = { litres, strength, tempC, notes: [...litres.notes, ...notes] };
    if (input.powder !== undefined)
      return limeStrength(input.powder, input.per ?? input.amount, strength, tempC, input);
    if (input.volume === undefined) return batch(asked);
    const tank = askedWater(input.volume);
    const use =
      input.goal === undefined
        ? undefined
        : readQuantity('alkalinity', splitADay(input.goal).amount, {
            field: 'goal',
            fallback: 'dKH',
          });
    if (use !== undefined && use.value <= 0) {
      throw new Problem(say('dose.dailyUseAbove0'), {
        field: 'goal',
        given: input.goal,
        hint: say('dose.measureWithDoseUse'),
      });
    }
    return topOff(asked, tank.volumeL, tank.read, use);
  },
});

function batch({ litres, strength, tempC, notes }: Limewater): Answer {
  const [low, high] = [strength.low * litres.value, strength.high * litres.value];
  return answer({
    headline: `${volume(litres.value)} of limewater cannot hold more than about ${span(significant(low, 2), significant(high, 2))} g of calcium hydroxide, ${levelSpoons(askedCompound('calcium hydroxide'), low, high) ?? ''}; more only settles.`,
    read: [
      `a batch of ${volumeAsWritten(litres.value, litres.written, litres.unit)} at ${fixed(tempC, 1)} °C`,
      ...notes,
    ],
    facts: [
      {
        label: 'Clear liquid',
        value: `about ${significant(capacity(1, strength.low, 1).meq, 3)} to ${significant(capacity(1, strength.high, 1).meq, 3)} meq per litre`,
      },
    ],
    steps: [
      `Weigh in about ${significant(high, 2)} g: a small excess is harmless as long as it stays on the bottom.`,
      'Stir once, let it settle for some hours, use the clear part. Do not shake it before dosing.',
      'Work out litres a day from the tank’s measured use: give volume and goal.',
      'Vinegar is not needed: it dissolves a few more grams and adds organic carbon that feeds bacteria.',
    ],
    working: [
      `${significant(strength.low, 4)} to ${significant(strength.high, 4)} g per litre at ${fixed(tempC, 1)} °C × ${volume(litres.value)}`,
    ],
    ...limewaterCare,
    sources: limewaterSources,
  });
}
