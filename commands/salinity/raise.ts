import { swapDays } from '../../core/change/day-plan.ts';
import { baggedMixGPerL, freshExcessFraction, mixRange, saltTopOffFraction } from '../../core/change/salt.ts';
import { Problem } from '../../core/problem.ts';
import { counted, fixed } from '../../core/quantity/format.ts';
import { answer, type Answer } from '../answer.ts';
import { percent } from '../waterchange/pour.ts';
import { dayLevels, type Pace } from './pace.ts';
import { ppt } from './print.ts';
import { opened } from '../short/remark-first.ts';
import { dayFacts, instrumentFirst, lead, paceDangers, type Plan } from './swap-plan.ts';
import { salinityPaceWords } from '../../core/water/salinity-pace.ts';
import { say } from '../../core/wording/say.ts';

/** How much stronger than the goal the swap water is mixed when raising and nothing else is said; own choice. */
const strongerPpt = 5;
/** Largest part of the volume an overrun top-off is likely to have added; own choice. */
const overrunMost = 0.06;
const overrun = 'Leave it if the water stands above its mark: it comes back as that evaporates.';

/** Raises by swapping tank water for stronger salt water day by day, or by topping off with salt water. */
export function raise(plan: Plan, pace: Pace, source: number | undefined, byTopOff = false): Answer {
  const { now, goalS, water, read } = plan;
  const s = now.practicalSalinity;
  const sourceS = source ?? Math.min(goalS + strongerPpt, mixRange.max);
  if (sourceS <= goalS) {
    throw new Problem(say('salinity.newWaterMustBe'), {
      field: 'fresh',
      given: ppt(sourceS),
      limit: say('salinity.above', { ppt: ppt(goalS) }),
    });
  }
  const swaps = swapDays(s, dayLevels(now, goalS, pace), sourceS, water.poured);
  const topOff = saltTopOffFraction(s, goalS, goalS);
  const excess = freshExcessFraction(goalS, s);
  const mix = baggedMixGPerL(goalS);
  const what = `salt water of ${ppt(sourceS)}`;
  const isOverrun = !byTopOff && excess <= overrunMost;
  const main = byTopOff
    ? `Top off with salt water of ${ppt(goalS)} in place of fresh: ${water.part(topOff)} in all, over at least ${counted(swaps.length, 'day')}.`
    : lead(swaps, water, what);
  const given = answer({
    headline: '',
    read: [
      ...read,
      `pace ${pace.text}`,
      ...(source === undefined && !byTopOff ? [`swap water taken as ${ppt(sourceS)}`] : []),
    ],
    facts: [
      byTopOff
        ? {
            label: 'salt for it',
            value: `${fixed(mix.low, 1)} to ${fixed(mix.high, 1)} g of mix a litre, weighed: spoons differ`,
          }
        : {
            label: 'by topping off with salt water instead',
            value: `${water.part(topOff)} of ${ppt(goalS)} in all`,
          },
      ...(byTopOff
        ? [{ label: 'a day', value: `at most ${water.part(topOff / swaps.length)}` }]
        : dayFacts(swaps, plan)),
      {
        label: 'fresh water in excess, if the level is too high',
        value: `${percent(excess)} of the volume (${water.part(excess)})`,
      },
    ],
    steps: [
      instrumentFirst,
      'If fresh water ran in and none was lost, switch the automatic top-off off, add nothing, wait for the mark.',
      'Only water lost on the floor took salt with it: replace that part with salt water.',
      byTopOff
        ? 'Mix it in the jug first, read it there, and go back to fresh water once the tank reads the goal.'
        : `Otherwise each day swap tank water for ${what}, mixed outside the tank.`,
      'Read the salinity the next day and go on from the reading, not from the plan.',
    ],
    working: [
      `swap share a day = (end of day - now)/(swap water - now); first day ${percent(swaps[0]?.fraction ?? 0)}`,
      `salt-water top-off = (goal - now)/(its salinity) = (${fixed(goalS, 2)} - ${fixed(s, 2)})/${fixed(goalS, 2)} = ${percent(topOff)} of the volume`,
      `fresh water in excess = 1 - now/usual = 1 - ${fixed(s, 2)}/${fixed(goalS, 2)} = ${percent(excess)}`,
    ],
    dangers: [...paceDangers(pace), 'Do not put dry salt into a tank with animals: mix it with water first.'],
    cautions: [
      `A rise is harder on animals than a fall: ${salinityPaceWords.up} a day is usual (common practice).`,
    ],
    sources: ['fm83', 'mixing', 'practice'],
  });
  return opened(
    isOverrun ? [{ value: overrun }, { label: 'otherwise', value: main }] : [{ value: main }],
    given,
  );
}
