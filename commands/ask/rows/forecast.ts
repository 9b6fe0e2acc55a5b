import { primer } from '../../../core/care/primers/cards.ts';
import type { Frame } from '../../../core/language/frame.ts';
import type { Answer } from '../../answer.ts';
import type { OwnContext } from '../../command.ts';
import { cardAnswer } from '../../primer/card-answer.ts';
import { excessCommand } from '../../salinity/excess.ts';
import { forecastCommand } from '../../salinity/forecast.ts';
import { call } from '../../called.ts';
import type { Row } from '../row.ts';
import { levelsOf } from './levels-of.ts';
import { perDays, spanSaid } from './span-said.ts';

export const forecastRows: readonly Row[] = [
  {
    kind: 'salinity-forecast',
    label: 'Salinity after evaporation or time away',
    needs: [
      {
        oneOf: ['waterRate', 'amount'],
        ask: 'How much water evaporates or goes in, and in what time?',
        when: ({ slots }) => slots.span !== undefined && levelsOf(slots, 'salinity').length < 2,
      },
    ],
    uses: [
      'levels',
      'now',
      'was',
      'other',
      'waterRate',
      'waterRateDays',
      'amount',
      'span',
      'spans',
      'volume',
    ],
    answer: (frame, context) =>
      evaporated(frame, context) ?? ranIn(frame, context) ?? cardAnswer(primer('top-off')),
  },
];

/** After days without a top-off, or with salt water in it. */
function evaporated({ slots }: Frame, context: OwnContext): Answer | undefined {
  const { waterRate, waterRateDays = 1, amount, volume } = slots;
  const now = levelsOf(slots, 'salinity', 'now', 'was').at(-1)?.text;
  const topOff = levelsOf(slots, 'salinity', 'other').at(-1)?.text;
  // An amount alone is what went in: it replaced what evaporated only where salt water did.
  const replaced = topOff === undefined ? undefined : amount;
  const evaporation = waterRate === undefined ? replaced : perDays(waterRate, waterRateDays);
  if (evaporation === undefined) return undefined;
  const input = { now, volume, evaporation, days: spanSaid(slots, context), 'top-off': topOff };
  return call(forecastCommand, input, context);
}

/** Fresh water that ran in: it reads less than it did, and no salt water was lost. */
export function ranIn({ slots }: Frame, context: OwnContext): Answer | undefined {
  const now = levelsOf(slots, 'salinity', 'now').at(-1)?.text;
  const usual = levelsOf(slots, 'salinity', 'was', 'wanted', 'target').at(0)?.text;
  if (now === undefined || usual === undefined) return undefined;
  return call(excessCommand, { now, usual, volume: slots.volume }, context);
}
