import { met } from '../../../core/language/met.ts';
import type { Frame } from '../../../core/language/frame.ts';
import { primer } from '../../../core/care/primers/cards.ts';
import { Problem } from '../../../core/problem.ts';
import { readQuantity } from '../../../core/quantity/read.ts';
import { significant } from '../../../core/quantity/format.ts';
import type { Answer } from '../../answer.ts';
import type { OwnContext } from '../../command.ts';
import { limewaterCommand } from '../../dose/limewater.ts';
import { solutionCommand } from '../../dose/solution.ts';
import { cardAnswer } from '../../primer/card-answer.ts';
import { call } from '../../called.ts';
import type { Row } from '../row.ts';
import { withRemarks } from './said-remarks.ts';
import { stockSaid } from './stock-said.ts';
import { isSwap, swapped } from './swap.ts';

export const solutionRows: readonly Row[] = [
  {
    kind: 'solution',
    label: 'Strength of a solution',
    needs: [
      { oneOf: ['salt'], ask: 'Which powder is it, by its chemical name?' },
      { oneOf: ['amount', 'strength'], ask: 'How much powder, in grams?' },
      {
        oneOf: ['container', 'strength'],
        ask: 'In how much water, filled up?',
        when: (frame) => !isSwap(frame),
      },
    ],
    uses: [
      'salt',
      'salts',
      'amount',
      'amounts',
      'strength',
      'container',
      'change',
      'wanted',
      'now',
      'volume',
    ],
    answer: (frame, context) => {
      if (isSwap(frame)) return swapped(frame, context);
      const { change, wanted, now, volume } = frame.slots;
      const stock = stockSaid(frame.slots);
      const goal = change === undefined ? wanted : `+${change}`;
      return stock === undefined
        ? undefined
        : call(
            solutionCommand,
            { ...stock, goal, now: goal === undefined ? undefined : now, tank: volume },
            context,
          );
    },
  },
  {
    kind: 'limewater',
    label: 'Limewater in the top-off',
    uses: [
      'container',
      'waterRate',
      'waterRateDays',
      'amount',
      'amountDays',
      'rate',
      'rateDays',
      'change',
      'of',
      'volume',
      'salt',
      'temperature',
    ],
    answer: (frame, context) => {
      const given = topOff(frame, context) ?? batch(frame, context) ?? cardAnswer(primer('limewater'));
      return withRemarks(frame, given);
    },
  },
];

/** Limewater in what evaporates each day, against a use where one was said. */
function topOff({ slots }: Frame, context: OwnContext): Answer | undefined {
  const { amount, amountDays, rate, rateDays = 1, change, of, volume } = slots;
  const daily = amountDays === undefined ? undefined : amount;
  const evaporates = slots.waterRate ?? daily;
  if (evaporates === undefined) return undefined;
  if (volume === undefined && context.keep?.tankInUse() === undefined)
    throw new Problem('How much water is in the system?', { field: 'volume' });
  const topOffADay = eachDay(evaporates, slots.waterRateDays ?? amountDays ?? 1);
  const goal = of === 'alkalinity' && rateDays === 1 ? (rate ?? change) : undefined;
  if (goal === undefined && volume === undefined) return undefined;
  return call(limewaterCommand, { amount: topOffADay, goal, volume }, context);
}

/** What a vessel of it can hold. */
function batch({ slots, reading: { scanned } }: Frame, context: OwnContext): Answer | undefined {
  const { container, volume } = slots;
  const vessel = container ?? (met(scanned, 'parts.vessel') ? volume : undefined);
  return vessel === undefined ? undefined : call(limewaterCommand, { amount: vessel }, context);
}

/** "14 L" a week as "2 L". */
function eachDay(amount: string, days: number): string {
  if (days === 1) return amount;
  const { value } = readQuantity('volume', amount, { field: 'amount' });
  return `${significant(value / days, 3)} L`;
}
