import type { Frame } from '../../../core/language/frame.ts';
import { met } from '../../../core/language/met.ts';
import type { Slots } from '../../../core/language/slots.ts';
import type { Answer } from '../../answer.ts';
import type { OwnContext } from '../../command.ts';
import { adjustCommand } from '../../salinity/adjust.ts';
import { goalCommand } from '../../waterchange/goal.ts';
import { onceCommand } from '../../waterchange/once.ts';
import { mixes } from '../../waterchange/level.ts';
import { call } from '../../called.ts';
import type { Row } from '../row.ts';
import { CHANGE_LEVELS, CHANGE_WATER, goalSaid, needsLevels } from './changes-said.ts';
import { judgedFrame } from './judged-frame.ts';
import { isSum, summed, timesSaid } from './changes-sum.ts';
import { perDays } from './span-said.ts';
import { pouredSaid, shareSaid } from './water-said.ts';
import { isWarmth, mixedWarmth } from './warmth.ts';
import { tokensWithin } from './words-beside.ts';

/** Salinity has sums of its own: towards a goal, else what one change does. */
function saltier({ slots }: Frame, context: OwnContext): Answer | undefined {
  const { now, was, wanted, other: fresh, volume } = slots;
  const reads = now ?? was;
  if (reads === undefined) return undefined;
  if (wanted !== undefined) return call(adjustCommand, { now: reads, goal: wanted, fresh, volume }, context);
  const poured = pouredSaid(slots);
  return call(adjustCommand, { now: reads, fresh, ...poured }, context);
}

/** What one change, or so many of one size, does to a reading; or how large it must be. */
function once(frame: Frame, context: OwnContext): Answer | undefined {
  const { slots } = frame;
  const { of, now, was, other, container } = slots;
  const reads = now ?? was;
  if (of === undefined || reads === undefined) return undefined;
  if (of === 'salinity') return saltier(frame, context);
  if (of === 'temperature') return judgedFrame(frame, context);
  const goal = goalSaid(frame);
  const poured = pouredSaid(slots);
  const isPoured = poured.share !== undefined || poured.amount !== undefined;
  const times = goal === undefined && isPoured ? timesSaid(frame) : undefined;
  const claimed = goal === undefined && isPoured ? beforeAndAfter(frame) : undefined;
  if (claimed !== undefined)
    return call(onceCommand, { of, ...claimed, ...poured, fresh: other, times }, context);
  const bucket = container ?? (goal === undefined || !asksVessels(frame) ? undefined : poured.amount);
  const input = { of, now: reads, goal, ...poured, fresh: other, bucket, times };
  return call(onceCommand, input, context);
}

/** "does 20 % only take nitrate from 50 to 40": the reading before the change and the one after it. */
function beforeAndAfter({ slots, reading: { scanned, said } }: Frame) {
  const [before, after, more] = said.filter(
    ({ part, of }) => of === slots.of && (part === 'was' || part === 'now'),
  );
  if (before === undefined || after === undefined || more !== undefined) return undefined;
  const between = tokensWithin(scanned, before.number.end, after.number.start);
  const isTo = between.some(({ word }) => word === 'to' || word === '>');
  return isTo ? { now: before.text, after: after.text } : undefined;
}

/** "how many buckets": counted in those that were named. */
function asksVessels({ reading: { scanned } }: Frame): boolean {
  return met(scanned, 'hardware.bucket', 'hardware.jug', 'hardware.bin', 'hardware.barrel');
}

/** "a quarter of her each time": a part of one is the share, where none else was said. */
function withPart(slots: Slots): Slots {
  const part = slots.counts?.find((count) => count > 0 && count < 1);
  if (part === undefined || slots.share !== undefined || slots.changed !== undefined) return slots;
  return { ...slots, share: `${Number((100 * part).toFixed(2))} %` };
}

function hasNoWater({ slots }: Frame): boolean {
  return slots.share === undefined && slots.changed === undefined && slots.waterRate === undefined;
}

export const changeRows: readonly Row[] = [
  {
    kind: 'change-once',
    label: 'ask.kindChangeOnce',
    needs: [
      { oneOf: ['of'], ask: 'ask.whichReadingOfChange', when: needsLevels },
      { oneOf: ['now', 'was'], ask: 'ask.readsNow', when: needsLevels },
      {
        oneOf: ['wanted', 'limit', 'change', 'share', 'changed', 'waterRate'],
        ask: 'ask.goalOrShare',
        when: needsLevels,
      },
    ],
    uses: [...CHANGE_LEVELS, ...CHANGE_WATER, 'change', 'container', 'temperature', 'otherTemperature'],
    answer: (frame, context) => {
      if (isSum(frame)) return summed(frame, context);
      return isWarmth(frame) ? mixedWarmth(frame, context) : once(frame, context);
    },
  },
  {
    kind: 'change-goal',
    label: 'ask.kindChangeGoal',
    needs: [
      { oneOf: ['now', 'was'], ask: 'ask.readsNowAndGoal', when: needsLevels },
      {
        oneOf: ['wanted', 'limit', 'change'],
        ask: 'ask.whereShouldItBe',
        when: (frame) => needsLevels(frame) && hasNoWater(frame),
      },
    ],
    uses: [...CHANGE_LEVELS, ...CHANGE_WATER, 'change', 'container'],
    answer: (frame, context) => {
      if (isSum(frame)) return summed(frame, context);
      const { of, now, was, other, rate, rateDays, volume } = frame.slots;
      const goal = goalSaid(frame);
      const reads = now ?? was;
      if (of === undefined || reads === undefined) return undefined;
      if (of === 'salinity') return saltier(frame, context);
      if (of === 'temperature') return judgedFrame(frame, context);
      const slots = withPart(frame.slots);
      const said = goal === undefined || !mixes(of) ? undefined : shareSaid(slots, context);
      // A volume stays one: 20 L of 240 L are poured, and not 8.33 %.
      const amount = slots.share === undefined && said?.volume !== undefined ? slots.changed : undefined;
      const times = rate === undefined && mixes(of) ? timesSaid(frame) : undefined;
      if (said === undefined && times !== undefined && goal !== undefined)
        return call(goalCommand, { of, now: reads, goal, volume, fresh: other, times }, context);
      if (said === undefined || goal === undefined) return once(frame, context);
      const levels = { of, now: reads, goal, volume: said.volume, fresh: other };
      const rise = rate === undefined ? undefined : perDays(rate, rateDays ?? 7);
      const each = amount === undefined ? { share: said.share } : { amount };
      return call(goalCommand, { ...levels, ...each, every: said.every, rise }, context);
    },
  },
];
