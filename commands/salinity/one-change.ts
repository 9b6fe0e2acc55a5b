import { afterChanges } from '../../core/change/exchange.ts';
import { mixRange } from '../../core/change/salt.ts';
import { inRange, Problem } from '../../core/problem.ts';
import { salinityPacePpt } from '../../core/water/salinity-pace.ts';
import { salinityRemark } from '../../core/water/salinity-remark.ts';
import { remarkFirst } from '../short/remark-first.ts';
import { answer, type Answer } from '../answer.ts';
import { both, readPairOf, understood } from './print.ts';
import { matchWater, netVolume } from '../waterchange/advice.ts';
import { percent, readWater, shareOf } from '../waterchange/pour.ts';
import { say } from '../../core/wording/say.ts';

/** What is asked of one change with water of another salinity. */
export interface SalinityChange {
  readonly now: string;
  readonly fresh?: string | undefined;
  readonly share?: string | undefined;
  readonly amount?: string | undefined;
  readonly volume?: string | undefined;
}

/** A change smaller than this is gone in the error of hobby instruments, ppt; own choice. */
const FELT_PPT = 0.3;

/**
 * The salinity after one change: salts mix by mass, which over a reef's range is by volume within 0.1 %.
 * Check: 35 ppt, a quarter replaced by 31 ppt -> 34 ppt.
 *
 * @throws Problem where the new water's salinity or the share is missing.
 */
export function oneChange(input: SalinityChange): Answer {
  if (input.fresh === undefined)
    throw new Problem(say('salinity.whatDoesNewSalt'), { field: 'fresh', hint: say('salinity.example1025') });
  const { now, goal } = readPairOf(input.now, isFreshWater(input.fresh) ? undefined : input.fresh);
  const fresh = isFreshWater(input.fresh) ? undefined : goal;
  for (const [field, reading] of [
    ['now', now],
    ['fresh', goal],
  ] as const)
    inRange(field, reading.practicalSalinity, mixRange.min, mixRange.max, 'ppt');
  const water = readWater(input.volume);
  const fraction = shareOf(input, water);
  if (fraction === undefined)
    throw new Problem(say('salinity.howMuchWaterDo'), { field: 'share', hint: say('change.exampleShare20') });
  const [from, to] = [now.practicalSalinity, fresh?.practicalSalinity ?? 0];
  const after = afterChanges({ now: from, fresh: to, fraction });
  const most = after > from ? salinityPacePpt.up : salinityPacePpt.down;
  const isFast = Math.abs(after - from) > most * 1.001;
  const what = fresh === undefined ? ' with fresh water' : '';
  const headline = `A ${percent(fraction)} change (${water.part(fraction)})${what} takes salinity from ${both(from, now.pair)} to ${both(after, now.pair)}.`;
  const given = answer({
    headline,
    read: [
      ...new Set([
        ...understood('tank', now),
        ...(fresh === undefined ? ['fresh (RO) water put in'] : understood('new salt water', fresh)),
        ...water.read,
      ]),
    ],
    facts: [{ label: 'it moves by', value: `${(after - from).toFixed(1)} ppt` }],
    steps: [
      ...(fresh === undefined
        ? ['Pour no dry salt in: swap water for stronger salt water over days (/salinity adjust).']
        : Math.abs(to - from) > FELT_PPT
          ? ['Mix the next batch to the salinity of the tank, read at the same temperature.', matchWater]
          : [matchWater]),
      'Read the tank again an hour after.',
    ],
    working: [
      `after = now + share x (new - now) = ${from.toFixed(2)} + ${fraction.toFixed(3)} x (${to.toFixed(2)} - ${from.toFixed(2)}) = ${after.toFixed(2)} ppt`,
    ],
    dangers: isFast
      ? [
          `That moves salinity by ${Math.abs(after - from).toFixed(1)} ppt at once; the usual limit is ${most} ppt a day${fresh === undefined ? '' : ': add it over hours or days'}.`,
        ]
      : [],
    cautions: [netVolume],
    sources: ['mixing', 'practice', 'fm83'],
  });
  return remarkFirst(salinityRemark(after), given);
}

/** "0", "0 ppt": no salt in it. */
export function isFreshWater(text: string): boolean {
  return /^0(?:[.,]0+)?(?:\s*ppt)?$/.test(text.trim());
}
