import { z } from 'zod';
import { freshTempC, mixedTempC, warmFraction } from '../../core/change/warmth.ts';
import { Problem } from '../../core/problem.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { defineCommand } from '../command.ts';
import { quantityOption } from '../options.ts';
import { askFirst, stillUnusual, sureOption } from '../unusual.ts';
import { readWater } from '../waterchange/pour.ts';
import { inBoth, poured, warmDangers, warmSteps, type Pouring } from './warm-words.ts';
import { fractionOf } from './warm-share.ts';
import { fittingHeadline } from '../fitting.ts';
import { shortLimits } from '../short/limits.ts';
import { say } from '../../core/wording/say.ts';

export const warmCommand = defineCommand({
  path: ['water', 'warm'],
  summary: 'Two waters poured together: the temperature that comes out, or how warm or how much one must be',
  example: '/water warm now:25 C fresh:18 C share:20 %',
  options: z.strictObject({
    now: quantityOption('temperature', 'What the water there reads, e.g. 25 C', 'temperature').optional(),
    fresh: quantityOption('temperature', 'The water that goes in; worked out if left out').optional(),
    goal: quantityOption('temperature', 'Where it should end; worked out if left out').optional(),
    share: quantityOption('share', 'Share of the water changed, e.g. 20 %').optional(),
    amount: quantityOption('volume', 'Or how much goes in, e.g. 10 L').optional(),
    volume: quantityOption('volume', 'How much water there is', 'volume').optional(),
    how: z
      .enum(['in a tank', 'in a bin'])
      .describe('in a tank as much is taken out first; in a bin it is only added')
      .default('in a tank'),
    sure: sureOption(),
  }),
  // The tank in use is no bin.
  fills: ({ how }) => how !== 'in a bin',
  run: (input): Answer => {
    const isTank = input.how === 'in a tank';
    const read = (field: 'now' | 'fresh' | 'goal') => {
      const text = input[field];
      return text === undefined ? undefined : readQuantity('temperature', text, { field });
    };
    const [now, fresh, goal] = [read('now'), read('fresh'), read('goal')];
    if (now === undefined)
      throw new Problem(say('water.whatDoesWaterThere'), {
        field: 'now',
        hint: say('water.exampleNow25C'),
      });
    const water = readWater(input.volume);
    const fraction = fractionOf(input, water, isTank);
    const { nowC, freshC, goalC, part } = solved(now.value, fresh?.value, goal?.value, fraction);
    const planned = { id: 'temperature', goal: goalC, now: nowC } as const;
    // What comes out is told; what is wished for is asked about first.
    const asked =
      isTank && goal !== undefined
        ? askFirst({
            ...planned,
            sure: input.sure,
            again: (label, changed) => action(label, 'water warm', { ...input, ...changed }),
          })
        : undefined;
    if (asked !== undefined) return asked;
    const pouring: Pouring = { nowC, freshC, goalC, fraction: part, water, isTank };
    const units = now.unit;
    const unusual = isTank ? stillUnusual(planned) : '';
    const said = poured(pouring, { fresh: fresh !== undefined, goal: goal !== undefined }, units);
    const isTold = unusual === '' || unusual.length + said.length <= shortLimits.headline;
    return answer({
      headline: fittingHeadline(`${unusual}${said}`, said),
      read: [
        `${inBoth(nowC, units)} there${fresh === undefined ? '' : `, ${inBoth(freshC, units)} goes in`}${goal === undefined ? '' : `, ${inBoth(goalC, units)} wanted`}`,
        ...water.read,
        ...new Set([now, fresh, goal].flatMap((one) => one?.notes ?? [])),
      ],
      facts: [
        { label: 'comes out at', value: inBoth(goalC, units) },
        { label: 'water that goes in', value: inBoth(freshC, units) },
      ],
      steps: warmSteps(pouring),
      working: [
        `${nowC.toFixed(1)} + ${part.toFixed(3)} x (${freshC.toFixed(1)} - ${nowC.toFixed(1)}) = ${goalC.toFixed(1)} °C, a litre of each taken to hold as much heat`,
      ],
      dangers: [...(isTold ? [] : [unusual.trim()]), ...warmDangers(pouring)],
      sources: ['mixing', 'practice'],
    });
  },
});

/** The one of the three that was left out. @throws Problem unless exactly one is. */
function solved(
  nowC: number,
  freshC: number | undefined,
  goalC: number | undefined,
  fraction: number | undefined,
): { nowC: number; freshC: number; goalC: number; part: number } {
  if (freshC !== undefined && fraction !== undefined && goalC === undefined)
    return { nowC, freshC, goalC: mixedTempC({ nowC, freshC, fraction }), part: fraction };
  if (goalC !== undefined && fraction !== undefined && freshC === undefined)
    return { nowC, freshC: freshTempC(nowC, goalC, fraction), goalC, part: fraction };
  if (goalC !== undefined && freshC !== undefined && fraction === undefined) {
    const part = warmFraction(nowC, goalC, freshC);
    if (part !== undefined) return { nowC, freshC, goalC, part };
    throw new Problem(say('water.waterTemperatureCannotBring'), {
      field: 'goal',
      hint: say('water.goalLiesBetweenWhat'),
    });
  }
  throw new Problem(say('water.giveTwoThreeFresh'), {
    field: fraction === undefined ? 'share' : 'fresh',
    hint: say('water.exampleNow25C2'),
  });
}
