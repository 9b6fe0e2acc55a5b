import { z } from 'zod';
import { mixRange } from '../../core/change/salt.ts';
import { inRange, Problem } from '../../core/problem.ts';
import { readSalinity } from '../../core/water/salinity-reading.ts';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { defineCommand } from '../command.ts';
import { quantityOption, textOption } from '../options.ts';
import { askFirst, stillUnusual, sureOption, type PlannedLevel } from '../unusual.ts';
import { readWater } from '../waterchange/pour.ts';
import { lower } from './lower.ts';
import { isFreshWater, oneChange } from './one-change.ts';
import { readPace } from './pace.ts';
import { both, readPairOf, remarkOn, understood } from './print.ts';
import { opened, remarkFirst, withSalinity } from '../short/remark-first.ts';
import { raise } from './raise.ts';
import type { Plan } from './swap-plan.ts';
import { say } from '../../core/wording/say.ts';

/** Two readings closer than this are the same with hobby instruments; own choice. */
const nearPpt = 0.3;
export const adjustCommand = defineCommand({
  path: ['salinity', 'adjust'],
  summary: 'Raise or lower the tank’s salinity: how much to swap each day',
  example: '/salinity adjust now:1.030 goal:1.026 volume:55 gal',
  options: z.strictObject({
    now: textOption('Tank reading, e.g. 1.030 or 39 ppt', { fill: 'salinity' }).optional(),
    goal: textOption('Salinity you want; 35 ppt if left out').optional(),
    volume: quantityOption('volume', 'Net water in the whole system', 'volume').optional(),
    pace: textOption('Most a day, e.g. 0.0005 or 1 ppt').optional(),
    fresh: textOption('Salinity of the water you swap in; fresh water for lowering').optional(),
    by: z.enum(['swap', 'top-off']).describe('Raise it by swapping water, or by the top-off').optional(),
    share: quantityOption('share', 'Or what one change of this share does, e.g. 20 %').optional(),
    amount: quantityOption('volume', 'Or what one change of this volume does, e.g. 40 L').optional(),
    sure: sureOption(),
  }),
  run: (input): Answer => {
    const again: PlannedLevel['again'] = (label, changed) =>
      action(label, 'salinity adjust', { ...input, ...changed });
    if (input.now === undefined) {
      const goalOnly = input.goal === undefined ? undefined : readSalinity(input.goal, { field: 'goal' });
      const goalS = goalOnly?.practicalSalinity;
      const first =
        goalS === undefined ? undefined : askFirst({ id: 'salinity', goal: goalS, sure: input.sure, again });
      if (first !== undefined) return first;
      throw new Problem(say('ask.tankReads'), {
        field: 'now',
        hint: say('salinity.exampleNow1030'),
      });
    }
    if (input.share !== undefined || input.amount !== undefined) {
      if (input.goal === undefined) return oneChange({ ...input, now: input.now });
      throw new Problem(say('salinity.giveGoalOrSize'), { field: 'goal' });
    }
    const { now, goal } = readPairOf(input.now, input.goal);
    inRange('now', now.practicalSalinity, mixRange.min, mixRange.max, 'ppt');
    inRange('goal', goal.practicalSalinity, mixRange.min, mixRange.max, 'ppt');
    const water = readWater(input.volume);
    const raising = goal.practicalSalinity > now.practicalSalinity;
    const read = [
      ...understood('tank', now),
      ...(input.goal === undefined
        ? ['no goal given, so 35 ppt']
        : understood('goal', goal).filter((line) => !line.startsWith('specific gravity on'))),
      ...water.read,
    ];
    const plan = { now, goalS: goal.practicalSalinity, water, read: [...new Set(read)] };
    if (Math.abs(goal.practicalSalinity - now.practicalSalinity) < nearPpt) return near(plan);
    const planned = { id: 'salinity', goal: goal.practicalSalinity, now: now.practicalSalinity } as const;
    const asked = askFirst({ ...planned, sure: input.sure, again });
    if (asked !== undefined) return asked;
    const pace = readPace(input.pace, now, raising);
    const source = input.fresh === undefined ? undefined : sourceOf(input.fresh);
    const given = raising
      ? raise(plan, pace, source, input.by === 'top-off')
      : lower(plan, pace, source ?? 0);
    const unusual = stillUnusual(planned).trim();
    const goalOff = { label: 'the goal', value: unusual, isBefore: true } as const;
    const main = { label: 'as asked', value: given.headline };
    return opened(withSalinity(remarkOn(now), [main, ...(unusual === '' ? [] : [goalOff])]), given);
  },
});

function sourceOf(text: string): number {
  return isFreshWater(text) ? 0 : readSalinity(text, { field: 'fresh' }).practicalSalinity;
}

function near({ now, goalS, read }: Plan): Answer {
  const [from, to] = [both(now.practicalSalinity, now.pair), both(goalS, now.pair)];
  const given = answer({
    headline:
      from === to
        ? `Leave it: the tank is at the goal, ${to}.`
        : `Leave it: ${from} and ${to} are closer than a hobby instrument can tell.`,
    read,
    steps: [
      'Check the instrument on a 35 ppt standard, and keep replacing what evaporates with fresh water.',
    ],
    sources: ['fm83', 'practice'],
  });
  return remarkFirst(remarkOn(now), given);
}
