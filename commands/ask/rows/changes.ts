import { primer } from '../../../core/care/primers/cards.ts';
import type { Frame } from '../../../core/language/frame.ts';
import type { SlotName } from '../../../core/language/slots.ts';
import type { Answer } from '../../answer.ts';
import type { OwnContext } from '../../command.ts';
import { adjustCommand } from '../../salinity/adjust.ts';
import { cardAnswer } from '../../primer/card-answer.ts';
import { dripCommand } from '../../waterchange/drip.ts';
import { goalCommand } from '../../waterchange/goal.ts';
import { onceCommand } from '../../waterchange/once.ts';
import { routineCommand } from '../../waterchange/routine.ts';
import { call } from '../../called.ts';
import type { Row } from '../row.ts';
import { isCounted, isSum, summed } from './changes-sum.ts';
import { perDays } from './span-said.ts';
import { shareSaid } from './water-said.ts';
import { isWarmth, mixedWarmth } from './warmth.ts';

const LEVELS: readonly SlotName[] = [
  'of',
  'levels',
  'now',
  'was',
  'wanted',
  'limit',
  'other',
  'rate',
  'rateDays',
];
const WATER: readonly SlotName[] = [
  'share',
  'shares',
  'changed',
  'everyDays',
  'volume',
  'waterRate',
  'waterRateDays',
];
const ASK_LEVELS = 'What does it read now, and where should it be?';

function needsLevels(frame: Frame): boolean {
  return !isSum(frame) && !isWarmth(frame);
}

/** Salinity has sums of its own; undefined without a goal. */
function saltier({ slots }: Frame, context: OwnContext): Answer | undefined {
  const { now, was, wanted, other, volume } = slots;
  return wanted === undefined
    ? undefined
    : call(adjustCommand, { now: now ?? was, goal: wanted, fresh: other, volume }, context);
}

export const changeRows: readonly Row[] = [
  {
    kind: 'change-once',
    label: 'One water change: how big, what it does',
    needs: [
      { oneOf: ['of'], ask: 'Which reading is it about: nitrate, phosphate, alkalinity?', when: needsLevels },
      { oneOf: ['now', 'was'], ask: 'What does it read now?', when: needsLevels },
      {
        oneOf: ['wanted', 'limit', 'share', 'changed', 'waterRate'],
        ask: 'Where should it be, or how much water do you change?',
        when: needsLevels,
      },
    ],
    uses: [...LEVELS, ...WATER, 'temperature', 'otherTemperature', 'counts'],
    answer: (frame, context) => {
      if (isSum(frame)) return summed(frame, context);
      if (isWarmth(frame)) return mixedWarmth(frame, context);
      const { of, now, was, wanted, limit, other, share, changed, volume } = frame.slots;
      const reads = now ?? was;
      if (of === undefined || reads === undefined) return undefined;
      if (of === 'salinity') return saltier(frame, context);
      const input = { of, now: reads, goal: wanted ?? limit, share, amount: changed, volume, fresh: other };
      return call(onceCommand, input, context);
    },
  },
  {
    kind: 'change-goal',
    label: 'How many changes to get there',
    needs: [
      { oneOf: ['now', 'was'], ask: ASK_LEVELS, when: needsLevels },
      { oneOf: ['wanted', 'limit'], ask: 'Where should it be?', when: needsLevels },
    ],
    uses: [...LEVELS, ...WATER, 'counts'],
    answer: (frame, context) => {
      if (isSum(frame)) return summed(frame, context);
      const { of, now, was, wanted, limit, other, rate, rateDays, volume } = frame.slots;
      const goal = wanted ?? limit;
      const reads = now ?? was;
      if (of === undefined || reads === undefined || goal === undefined) return undefined;
      if (of === 'salinity') return saltier(frame, context);
      const said = shareSaid(frame.slots, context);
      const levels = { of, now: reads, goal, volume, fresh: other };
      if (said === undefined) return call(onceCommand, levels, context);
      const rise = rate === undefined ? undefined : perDays(rate, rateDays ?? 7);
      return call(goalCommand, { ...levels, ...said, rise }, context);
    },
  },
  {
    kind: 'change-routine',
    label: 'Where regular changes settle',
    needs: [
      {
        oneOf: ['share', 'changed', 'waterRate'],
        ask: 'How much water do you change, and how often?',
        when: needsLevels,
      },
      {
        oneOf: ['rate', 'change'],
        ask: 'How much does it climb by itself, say in a week without a change?',
        when: needsLevels,
      },
    ],
    uses: [...LEVELS, ...WATER, 'change', 'counts', 'temperature', 'otherTemperature'],
    answer: (frame, context) => {
      if (isSum(frame)) return summed(frame, context);
      if (isWarmth(frame)) return mixedWarmth(frame, context);
      const { of, now, wanted, limit, other, rate, rateDays, change, everyDays, volume } = frame.slots;
      const said = shareSaid(frame.slots, context);
      const climb = rate ?? change;
      if (of === undefined || said === undefined || climb === undefined) return undefined;
      const rise = perDays(climb, rateDays ?? everyDays ?? 7);
      const goal = wanted ?? limit;
      return call(routineCommand, { of, rise, ...said, goal, now, fresh: other, volume }, context);
    },
  },
  {
    kind: 'change-drip',
    label: 'Bit by bit against one change',
    uses: [...LEVELS, ...WATER, 'span', 'counts'],
    answer: (frame, context) => {
      if (isCounted(frame)) return summed(frame, context);
      const { of, now, other, volume, changed, span } = frame.slots;
      const said = shareSaid(frame.slots, context);
      if (said === undefined) return cardAnswer(primer('water changes'));
      const reading = now === undefined ? {} : { of, now, fresh: other };
      const every = said.every ?? (changed === undefined ? span : undefined);
      return call(dripCommand, { share: said.share, every, volume, ...reading }, context);
    },
  },
];
