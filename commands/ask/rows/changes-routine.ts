import { primer } from '../../../core/care/primers/cards.ts';
import type { Frame } from '../../../core/language/frame.ts';
import { met } from '../../../core/language/met.ts';
import type { Answer } from '../../answer.ts';
import type { OwnContext } from '../../command.ts';
import { cardAnswer } from '../../primer/card-answer.ts';
import { routineCommand } from '../../waterchange/routine.ts';
import { call } from '../../called.ts';
import type { Row } from '../row.ts';
import { bitByBit } from './changes-drip.ts';
import { CHANGE_LEVELS, CHANGE_WATER, needsLevels } from './changes-said.ts';
import { isCounted, isSum, summed } from './changes-sum.ts';
import { readableAs } from './readable-as.ts';
import { perDays } from './span-said.ts';
import { shareSaid } from './water-said.ts';
import { isWarmth, mixedWarmth } from './warmth.ts';

export const routineRows: readonly Row[] = [
  {
    kind: 'change-routine',
    label: 'ask.kindChangeRoutine',
    needs: [
      {
        oneOf: ['share', 'changed', 'waterRate'],
        ask: 'ask.howMuchChanged',
        when: (frame) => needsLevels(frame) && !asksShare(frame),
      },
      {
        oneOf: ['rate', 'change'],
        ask: 'ask.howFastItClimbs',
        when: (frame) => needsLevels(frame) && !isSteady(frame),
      },
    ],
    uses: ['span', 'spans', ...CHANGE_LEVELS, ...CHANGE_WATER, 'change', 'temperature', 'otherTemperature'],
    answer: (frame, context) => {
      if (isSum(frame)) return summed(frame, context);
      return isWarmth(frame) ? mixedWarmth(frame, context) : settled(frame, context);
    },
  },
  {
    kind: 'change-drip',
    label: 'ask.kindChangeDrip',
    uses: [...CHANGE_LEVELS, ...CHANGE_WATER, 'span', 'spans'],
    answer: (frame, context) =>
      isCounted(frame)
        ? summed(frame, context)
        : (bitByBit(frame, context) ?? held(frame, context) ?? cardAnswer(primer('water changes'))),
  },
];

/** What builds up and a level to keep it under: the share is what is asked. */
function asksShare({ slots: { rate, change, wanted, limit } }: Frame): boolean {
  return (rate ?? change) !== undefined && (wanted ?? limit) !== undefined;
}

/** The share that holds a level; a slow exchange is counted by the time its rise is said for. */
function held(frame: Frame, context: OwnContext): Answer | undefined {
  const { of, wanted, limit, rate, rateDays, change, other, volume } = frame.slots;
  const climb = rate ?? change;
  if (of === undefined || climb === undefined || !asksShare(frame)) return undefined;
  const every = frame.kind === 'change-drip' && rateDays !== undefined ? `${rateDays} days` : undefined;
  const rise = perDays(climb, rateDays ?? 7);
  return call(routineCommand, { of, rise, every, goal: wanted ?? limit, fresh: other, volume }, context);
}

/** So long under the same changes, a level has come to where it stays; own choice. */
const LONG_DAYS = 28;

/** "stuck at 30", "a year of it and still 40": it stays where it is under what is changed. */
function isSteady({ slots: { now, levels = [], of, spans = [] }, reading: { scanned } }: Frame): boolean {
  const isOne = levels.filter((level) => level.of === of).length === 1;
  const isLong = spans.some((text) => (readableAs('days', text) ?? 0) >= LONG_DAYS);
  return now !== undefined && isOne && (isLong || met(scanned, 'sums.stuck', 'sums.settles'));
}

function settled(frame: Frame, context: OwnContext): Answer | undefined {
  const { slots } = frame;
  const { of, levels = [], now, wanted, limit, other, rate, rateDays, change, everyDays } = slots;
  const said = shareSaid(slots, context);
  const climb = rate ?? change;
  if (said === undefined) return held(frame, context);
  if (of !== undefined && climb === undefined && isSteady(frame))
    return call(routineCommand, { of, share: said.share, every: said.every, now, fresh: other }, context);
  if (of === undefined || climb === undefined) return undefined;
  // A climb said without its time is one from change to change.
  const own = levels.findLast((level) => level.of === of && level.text === climb)?.everyDays;
  const rise = perDays(climb, rateDays ?? own ?? everyDays ?? 7);
  const { share, every } = said;
  const input = { of, rise, share, every, goal: wanted ?? limit, now, fresh: other };
  return call(routineCommand, { ...input, volume: said.volume }, context);
}
