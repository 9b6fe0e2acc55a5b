import { z } from 'zod';
import { afterChanges } from '../../core/change/exchange.ts';
import { Problem } from '../../core/problem.ts';
import { counted, fromTo } from '../../core/quantity/format.ts';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { defineCommand } from '../command.ts';
import { quantityOption, textOption } from '../options.ts';
import {
  afterSome,
  afterWorking,
  causes,
  matchWater,
  mostAtOnce,
  netVolume,
  tooFast,
  tooMuch,
} from './advice.ts';
import { opened } from '../short/remark-first.ts';
import { askFirst, stillUnusual, sureOption, type PlannedLevel } from '../unusual.ts';
import { plannedOf, readLevel, readLevels, type Levels } from './level.ts';
import { didAsMuchAs, seenAfter } from './seen-after.ts';
import { forGoal, neededFor } from './once-goal.ts';
import { bucketFacts, percent, readWater, shareOf, type Water } from './pour.ts';
import { say } from '../../core/wording/say.ts';

/** More changes than this are a routine. Own choice. */
const MOST_TIMES = 100;

export const onceCommand = defineCommand({
  path: ['waterchange', 'once'],
  summary: 'One water change: the level after it, or the share one change would need',
  example: '/waterchange once of:alkalinity now:14 dKH goal:9 dKH fresh:8 dKH volume:75 gal',
  options: z.strictObject({
    of: textOption('What is measured: nitrate, phosphate, alkalinity, ...', { suggest: 'mixed' }),
    now: textOption('Reading now, e.g. 40 ppm or 14 dKH'),
    goal: textOption('Level you want').optional(),
    share: quantityOption('share', 'Share of the water you change, e.g. 20 %').optional(),
    amount: quantityOption('volume', 'Or how much you change, e.g. 40 L').optional(),
    volume: quantityOption('volume', 'Net water in the whole system', 'volume').optional(),
    fresh: textOption('Level in the new salt water; nitrate and phosphate: 0 if left out').optional(),
    after: textOption('What it did read after it, to compare').optional(),
    times: z.int().min(1).max(MOST_TIMES).describe('So many of them, one after the other').optional(),
    bucket: quantityOption('volume', 'A bucket to count it in, e.g. 12 L').optional(),
    sure: sureOption(),
  }),
  run: (input): Answer => {
    const levels = readLevels(input);
    const water = readWater(input.volume);
    const fraction = shareOf(input, water);
    const toGoal = levels.goal === undefined ? undefined : neededFor(levels, levels.goal);
    if (fraction === undefined && toGoal === undefined) {
      throw new Problem(say('change.iNeedEitherShare'), {
        field: 'share',
        hint: say('change.exampleShare20'),
      });
    }
    const again: PlannedLevel['again'] = (label, changed) =>
      action(label, 'waterchange once', { ...input, times: input.times?.toString(), ...changed });
    const end = levels.goal ?? afterChanges({ ...levels, fraction: fraction ?? 0 }, input.times);
    const asked = askFirst({
      ...plannedOf(levels, end),
      sure: input.sure,
      again,
      hasGoal: input.goal !== undefined,
    });
    if (asked !== undefined) return asked;
    const buckets = bucketFacts(input.bucket, water, toGoal?.fraction ?? fraction ?? 0);
    const given =
      toGoal === undefined
        ? forShare(levels, water, fraction ?? 0, input)
        : forGoal(levels, water, toGoal, fraction);
    return { ...given, facts: [...buckets, ...given.facts] };
  },
});

function forShare(
  levels: Levels,
  water: Water,
  fraction: number,
  { times = 1, after: found }: { readonly times?: number | undefined; readonly after?: string | undefined },
): Answer {
  const { now, fresh, show, about } = levels;
  const after = afterChanges({ now, fresh, fraction }, times);
  const large = fraction > mostAtOnce;
  const seen = found === undefined ? undefined : readLevel(levels.id, found, 'after');
  const isStill = show(now) === show(after);
  const what =
    times === 1
      ? `A ${percent(fraction)} change (${water.part(fraction)}) ${isStill ? 'leaves' : 'takes'}`
      : `${counted(times, 'change')} of ${percent(fraction)} (${water.part(fraction)} each) ${isStill ? 'leave' : 'take'}`;
  const unusual = stillUnusual(plannedOf(levels, after)).trim();
  const given = answer({
    headline: '',
    read: [...levels.read, ...water.read, ...levels.notes],
    facts: [
      ...(seen === undefined ? [] : didAsMuchAs(levels, seen)),
      ...[1, 2, 3].filter((n) => n !== times).map((n) => afterSome(levels, water, fraction, n)),
    ],
    steps: [...levels.doubts, matchWater, `Test ${about.label} again the next day.`, causes(levels)],
    working: [afterWorking(levels, fraction)],
    dangers: [...tooFast(levels, after), ...(large ? [tooMuch(levels)] : [])],
    cautions: [netVolume],
    sources: ['mixing', 'practice', ...about.basis],
  });
  const main = { value: `${what} ${about.label} ${fromTo(show(now), show(after))}.` };
  if (seen !== undefined)
    return opened([main, { label: 'what you read', value: seenAfter(levels, after, seen) }], given);
  return opened(unusual === '' ? [main] : [main, { label: 'the level', value: unusual }], given);
}
