import { z } from 'zod';
import { afterChanges, changesToGoal } from '../../core/change/exchange.ts';
import { Problem } from '../../core/problem.ts';
import { counted, fixed } from '../../core/quantity/format.ts';
import { answer, type Answer } from '../answer.ts';
import { defineCommand } from '../command.ts';
import { quantityOption } from '../options.ts';
import { matchWater, mostAtOnce, NOT_HALF } from './advice.ts';
import { percent, readShare, readWater, type Water } from './pour.ts';
import { say } from '../../core/wording/say.ts';

/** More changes than this are a routine, not a sum. */
const MOST = 100;
/** So near two sums are about the same, per cent of the water; own choice. */
const NEAR = 0.01;

export const sumCommand = defineCommand({
  path: ['waterchange', 'sum'],
  summary: 'What several water changes replace together, and how many small ones make a large one',
  example: '/waterchange sum share:20 % times:4 single:80 %',
  options: z.strictObject({
    share: quantityOption('share', 'Share of the water in each change, e.g. 20 %'),
    times: z.int().min(1).max(MOST).describe('How many of them').optional(),
    single: quantityOption('share', 'One change to compare with, e.g. 50 %').optional(),
    volume: quantityOption('volume', 'Net water in the whole system', 'volume').optional(),
  }),
  run: ({ share, times, single, volume }): Answer => {
    const each = readShare(share);
    const one = single === undefined ? undefined : readShare(single);
    const count = times ?? timesFor(each, one);
    const gone = replaced(each, count);
    const water = readWater(volume);
    const { headline, isOf } = worded({ each, count, gone, one, isCounted: times === undefined });
    return answer({
      headline,
      read: [`${counted(count, 'change')} of ${percent(each)}, one after the other`, ...water.read],
      facts: [
        { label: 'new water poured', value: inAll(water, each, count) },
        ...(isOf && one !== undefined ? [{ label: 'poured in the one change', value: water.part(one) }] : []),
      ],
      steps: [matchWater, 'To take a reading somewhere: /waterchange goal counts the changes.'],
      working: [`1 - (1 - ${fixed(each, 3)})^${count} = ${fixed(gone, 4)}`],
      dangers: Math.max(each, one ?? 0) > mostAtOnce ? [NOT_HALF] : [],
      cautions: [
        'Each one also takes out new water, so the shares do not add up.',
        'Small ones move salinity, temperature and alkalinity less at a time.',
      ],
      sources: ['mixing', 'practice'],
    });
  },
});

/** Part of the old water that is gone. */
function replaced(each: number, count: number): number {
  return 1 - afterChanges({ now: 1, fresh: 0, fraction: each }, count);
}

/** The fewest changes that replace as much as the one. @throws Problem where neither is given. */
function timesFor(each: number, one: number | undefined): number {
  if (one === undefined) {
    throw new Problem(say('change.howManyChangesSize'), {
      field: 'times',
      hint: say('change.orNameOneChange'),
    });
  }
  const found = one >= 1 || each >= 1 ? undefined : changesToGoal({ now: 1, goal: 1 - one, fresh: 0 }, each);
  if (found !== undefined && found.whole <= MOST) return found.whole;
  throw new Problem(say('change.noNumberSuchChanges'), {
    field: 'single',
    given: percent(one),
    limit: say('change.lessThan100At', { MOST }),
  });
}

interface Sum {
  readonly each: number;
  readonly count: number;
  readonly gone: number;
  readonly one: number | undefined;
  /** Whether the count was worked out and not given. */
  readonly isCounted: boolean;
}

function worded({ each, count, gone, one, isCounted }: Sum): {
  readonly headline: string;
  readonly isOf: boolean;
} {
  const sum = `${counted(count, 'change')} of ${percent(each)} ${count === 1 ? 'replaces' : 'replace'} ${percent(gone)} of the old water`;
  if (one === undefined) return { headline: `${sum}.`, isOf: false };
  if (isCounted)
    return {
      headline: `${counted(count, 'change')} of ${percent(each)} do what one of ${percent(one)} does: they replace ${percent(gone)} of the old water.`,
      isOf: true,
    };
  if (Math.abs(one - gone) <= NEAR + 1e-9) return { headline: `About the same: ${sum}.`, isOf: true };
  return { headline: `Not the same: ${sum}, one of ${percent(one)} replaces ${percent(one)}.`, isOf: true };
}

function inAll({ part, poured, sum }: Water, each: number, count: number): string {
  const share = poured(each);
  return `${part(share)} each, ${sum(Array<number>(count).fill(share))} in all`;
}
