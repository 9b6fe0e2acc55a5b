import { compoundsFor } from '../../../core/dosing/compound.ts';
import type { Frame } from '../../../core/language/frame.ts';
import type { SlotName } from '../../../core/language/slots.ts';
import { parameter, type ParameterId } from '../../../core/water/parameter.ts';
import type { Answer } from '../../answer.ts';
import type { OwnContext } from '../../command.ts';
import { inOwnUnit } from '../../dose/asked.ts';
import { dailyCommand, HOLDS_ONLY } from '../../dose/daily.ts';
import { solutionCommand } from '../../dose/solution.ts';
import { useCommand } from '../../dose/use.ts';
import { untilCommand } from '../../water/until.ts';
import { readPerDay } from '../../waterchange/rate.ts';
import { call } from '../call.ts';
import type { Row } from '../row.ts';
import { byLabel, hasLabel } from './by-label.ts';
import { withRemarks } from './said-remarks.ts';
import { fallRate, spanSaid } from './span-said.ts';
import { stockSaid } from './stock-said.ts';
import { saltFor } from './wanted.ts';

const READINGS: readonly SlotName[] = [
  'of',
  'levels',
  'was',
  'now',
  'change',
  'rate',
  'rateDays',
  'span',
  'spans',
];
const ADDED: readonly SlotName[] = [
  'moments',
  'volume',
  'salt',
  'amount',
  'amountDays',
  'strength',
  'container',
];

export const useRows: readonly Row[] = [
  {
    kind: 'dose-use',
    label: 'What my tank uses a day',
    needs: [
      {
        oneOf: ['was', 'change', 'rate'],
        ask: 'What did it read, what does it read now, and how many days lie between?',
      },
      { oneOf: ['span', 'moments', 'rate'], ask: 'How much time lies between the two readings?' },
    ],
    uses: [...READINGS, ...ADDED],
    answer: (frame, context) => useOf(frame, context) ?? daily(frame, context),
  },
  {
    kind: 'dose-daily',
    label: 'How much to dose each day',
    needs: [
      {
        oneOf: ['rate', 'was', 'change'],
        ask: 'How much does the tank use a day? Or: two readings, and the days between them.',
        when: (frame) => !hasLabel(frame),
      },
    ],
    uses: [...READINGS, ...ADDED],
    answer: (frame, context) => byLabel(frame, context) ?? daily(frame, context) ?? useOf(frame, context),
  },
];

/** From two readings and the time between them, with what was added meanwhile. */
export function useOf(frame: Frame, context: OwnContext): Answer | undefined {
  const { of, was, now, amount, amountDays, salt, volume } = frame.slots;
  const over = spanSaid(frame.slots, context);
  if (of === undefined || was === undefined || now === undefined || over === undefined) return undefined;
  const added = amount === undefined ? undefined : `${amount}${amountDays === 1 ? ' a day' : ''}`;
  const input = { of, before: was, now, over, amount: added, with: salt, volume };
  return withRemarks(frame, call(useCommand, input, context));
}

/** From a use that is known, or a fall in a known time; where a level and its end were named, when it gets there. */
function daily(frame: Frame, context: OwnContext): Answer | undefined {
  const { of, now, limit, wanted, volume } = frame.slots;
  const use = fallRate(frame.slots, context);
  if (of === undefined || use === undefined || compoundsFor(of).length === 0) return undefined;
  const end = limit ?? wanted;
  if (now !== undefined && end !== undefined && Number.parseFloat(end) < Number.parseFloat(now))
    return call(untilCommand, { of, now, use, goal: end }, context);
  const given =
    ofStock(frame, of, use, context) ??
    call(dailyCommand, { of, use, with: saltFor(frame.slots, of), volume }, context);
  return withRemarks(frame, given);
}

/** Where the strength of the stock was said: the millilitres of it each day. */
function ofStock({ slots }: Frame, of: ParameterId, use: string, context: OwnContext): Answer | undefined {
  const stock = stockSaid(slots);
  if (stock === undefined) return undefined;
  const perDay = inOwnUnit(of, readPerDay(of, use, 'use').perDay);
  const goal = `+${Number(perDay.toPrecision(4))} ${parameter(of).unit}`;
  const given = call(solutionCommand, { ...stock, goal, tank: slots.volume }, context);
  return { ...given, headline: `Each day: ${given.headline}`, steps: [HOLDS_ONLY, ...given.steps] };
}
