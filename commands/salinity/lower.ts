import { swapDays } from '../../core/change/day-plan.ts';
import { fractionForGoal } from '../../core/change/exchange.ts';
import { afterSaltTopOff } from '../../core/change/salt.ts';
import { fixed } from '../../core/quantity/format.ts';
import { answer, type Answer } from '../answer.ts';
import { percent } from '../waterchange/pour.ts';
import { dayLevels, type Pace } from './pace.ts';
import { ppt, seawaterPpt } from './print.ts';
import { dayFacts, instrumentFirst, lead, paceDangers, type Plan } from './swap-plan.ts';

/** Lowers by swapping tank water for water of `sourceS` (0: fresh water), day by day. */
export function lower(plan: Plan, pace: Pace, sourceS: number): Answer {
  const { now, goalS, water, read } = plan;
  const s = now.practicalSalinity;
  const swaps = swapDays(s, dayLevels(now, goalS, pace), sourceS, water.poured);
  const single = fractionForGoal({ now: s, goal: goalS, fresh: sourceS }) ?? 0;
  const what = sourceS === 0 ? 'fresh (RO) water' : `water of ${ppt(sourceS)}`;
  return answer({
    headline: lead(swaps, water, what),
    read: [...read, `pace ${pace.text}`],
    facts: [
      ...(swaps.length === 1
        ? []
        : [
            {
              label: 'in one go',
              value: `${percent(single)} (${water.part(single)})`,
              verdict: 'too much with corals or other invertebrates',
            },
          ]),
      ...dayFacts(swaps, plan),
    ],
    steps: [
      instrumentFirst,
      `Each day take out tank water first, then slowly add as much ${what} into the sump or strong flow.`,
      'Read the salinity the next day and go on from the reading, not from the plan.',
      'From then on replace what evaporates with fresh water only.',
    ],
    working: [
      `single swap = 1 - goal/now: share = (${fixed(s, 2)} - ${fixed(goalS, 2)})/(${fixed(s, 2)} - ${fixed(sourceS, 2)}) = ${percent(single)}`,
      'Shares are by mass; by volume fresh water needs up to 3 % more of each, so the plan errs on the gentle side.',
    ],
    dangers: [
      ...paceDangers(pace),
      'Do not pour fresh water into a tank at its full level: remove the same volume first.',
    ],
    cautions: [
      `Salt water used for topping off by mistake adds up: each 1 % of the volume topped off with 35 ppt raises the tank by ${fixed(afterSaltTopOff(seawaterPpt, seawaterPpt, 0.01) - seawaterPpt, 2)} ppt.`,
      'Fish bear a fall better than a rise; some keepers take half the days (common practice).',
    ],
    sources: ['fm83', 'mixing', 'practice'],
  });
}
