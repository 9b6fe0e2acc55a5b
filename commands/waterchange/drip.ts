import { z } from 'zod';
import {
  afterContinuous,
  continuousEqualToBatch,
  fractionOfContinuous,
} from '../../core/change/continuous.ts';
import { afterChanges } from '../../core/change/exchange.ts';
import { Problem } from '../../core/problem.ts';
import { fixed, volume } from '../../core/quantity/format.ts';
import { answer, type Answer } from '../answer.ts';
import { defineCommand } from '../command.ts';
import { quantityOption, textOption } from '../options.ts';
import { matchWater } from './advice.ts';
import { readLevels, type Levels } from './level.ts';
import { percent, readWater, shareOf, type Water } from './pour.ts';
import { days, readEvery } from './rate.ts';
import { say } from '../../core/wording/say.ts';

/** From here on a batch of that share is all of the water. Own choice. */
const MOST_BATCH = 0.99;

export const dripCommand = defineCommand({
  path: ['waterchange', 'drip'],
  summary: 'Water exchanged continuously, against the same volume in one change',
  example: '/waterchange drip share:30 % every:1 day volume:400 L of:nitrate now:40 ppm',
  options: z.strictObject({
    share: quantityOption('share', 'Volume passed through, as a share of the system, e.g. 30 %').optional(),
    amount: quantityOption('volume', 'Or the volume passed through, e.g. 80 L').optional(),
    volume: quantityOption('volume', 'Net water in the whole system', 'volume').optional(),
    every: quantityOption('days', 'Time it is spread over; 1 day if left out').optional(),
    of: textOption('A reading to follow: nitrate, alkalinity, ...', { suggest: 'mixed' }).optional(),
    now: textOption('That reading now').optional(),
    fresh: textOption('Its level in the new salt water; nitrate and phosphate: 0 if left out').optional(),
  }),
  run: (input): Answer => {
    const water = readWater(input.volume);
    const fraction = shareOf(input, water);
    if (fraction === undefined)
      throw new Problem(say('change.howMuchPassedThrough'), {
        field: 'share',
        hint: say('change.exampleShare30'),
      });
    if ((input.of === undefined) !== (input.now === undefined)) {
      throw new Problem(say('change.followReadingINeed'), {
        field: input.of === undefined ? 'of' : 'now',
      });
    }
    const { of, now, fresh } = input;
    const levels = of === undefined || now === undefined ? undefined : readLevels({ of, now, fresh });
    return drip(fraction, water, readEvery(input.every ?? '1 day'), levels);
  },
});

/** A batch of all the water is none: what runs through takes out its share, and no batch is compared with it. */
function withoutBatch(fraction: number, water: Water, overDays: number, levels: Levels | undefined): Answer {
  const gone = percent(fractionOfContinuous(fraction));
  return answer({
    headline: `${passed(fraction)} (${water.part(fraction)}) passed through bit by bit takes out ${gone} of the old water: some of the new goes with the old.`,
    read: [
      `${water.part(fraction)} over ${days(overDays)}, in and out at the same rate`,
      ...(levels?.read ?? []),
      ...water.read,
      ...(levels?.notes ?? []),
    ],
    facts: levels === undefined ? [] : levelFacts(levels, fraction).slice(1),
    steps: [matchWater],
    working: [`1 - e^-${fixed(fraction, 3)} = ${gone}`],
    dangers: [TWO_PUMPS],
    cautions: levels?.doubts ?? [],
    sources: ['mixing', 'practice'],
  });
}

const TWO_PUMPS =
  'Two pumps unattended can flood or empty a tank: level switch, finite reservoir, drip loop on every cable.';

function drip(fraction: number, water: Water, overDays: number, levels: Levels | undefined): Answer {
  if (fraction > MOST_BATCH) return withoutBatch(fraction, water, overDays, levels);
  const gone = fractionOfContinuous(fraction);
  const equal = continuousEqualToBatch(fraction);
  const inThree = 1 - (1 - fraction / 3) ** 3;
  const perHour = volume((water.volumeL * equal) / (overDays * 24));
  const per100 = water.part(1).includes('per 100 L') ? ' per 100 L' : '';
  return answer({
    headline: `Not quite the same: ${percent(fraction)} bit by bit takes out ${percent(gone)} of the old water. To equal one batch, pass ${passed(equal)} (${water.part(equal)}).`,
    read: [
      `${percent(fraction)} of the volume (${water.part(fraction)}) over ${days(overDays)}, in and out at the same rate`,
      ...(levels?.read ?? []),
      ...water.read,
      ...(levels?.notes ?? []),
    ],
    facts: [
      { label: 'the flow that equals the batch', value: `about ${perHour}${per100} an hour` },
      ...(levels === undefined ? [] : levelFacts(levels, fraction)),
      { label: `three batches of ${percent(fraction / 3)} take out`, value: percent(inThree) },
    ],
    steps: [
      'Match the two pumps by measuring each into a jug; unequal pumps make salinity and level drift.',
      'Put the inlet and outlet far apart, and watch salinity daily at first.',
      matchWater,
    ],
    working: [
      `continuous: 1 - e^-${fixed(fraction, 3)} = ${percent(gone)}`,
      `equal volume: -ln(1 - ${fixed(fraction, 3)}) = ${fixed(equal, 4)} of the system`,
    ],
    dangers: [TWO_PUMPS],
    cautions: [
      'It works well: a little new water is lost with the old, and the tank stays steadier. Choose by what suits you.',
      ...(levels?.doubts ?? []),
    ],
    sources: ['mixing', 'practice'],
  });
}

/** Beyond the whole volume a share reads like a slip. */
function passed(turnover: number): string {
  return turnover > 1 ? `${fixed(turnover, 2)} times the volume` : percent(turnover);
}

function levelFacts(levels: Levels, fraction: number): Answer['facts'] {
  const { now, fresh, show, about } = levels;
  return [
    { label: `${about.label} after one batch`, value: show(afterChanges({ now, fresh, fraction })) },
    {
      label: `${about.label} after the same volume continuously`,
      value: show(afterContinuous(now, fresh, fraction)),
    },
  ];
}
