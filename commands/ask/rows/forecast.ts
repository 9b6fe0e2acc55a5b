import { primer } from '../../../core/care/primers/cards.ts';
import type { Frame } from '../../../core/language/frame.ts';
import { met } from '../../../core/language/met.ts';
import { isFreshForSalt, isSaltTopOff } from '../../../core/language/salt-top-off.ts';
import type { Answer } from '../../answer.ts';
import type { OwnContext } from '../../command.ts';
import { cardAnswer } from '../../primer/card-answer.ts';
import { adjustCommand } from '../../salinity/adjust.ts';
import { excessCommand } from '../../salinity/excess.ts';
import { lostCommand } from '../../salinity/lost.ts';
import { forecastCommand } from '../../salinity/forecast.ts';
import { call } from '../../called.ts';
import type { Row } from '../row.ts';
import { levelsOf } from './levels-of.ts';
import { daysSaid, sunk } from './forecast-said.ts';
import { perDays } from './span-said.ts';
import { waterEach } from './water-said.ts';

export const forecastRows: readonly Row[] = [
  {
    kind: 'salinity-forecast',
    label: 'ask.kindSalinityForecast',
    needs: [
      {
        oneOf: ['waterRate', 'amount', 'changed', 'container'],
        ask: 'ask.howMuchEvaporates',
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
      'amountDays',
      'changed',
      'container',
      'span',
      'spans',
      'volume',
    ],
    answer: (frame, context) =>
      freshForSalt(frame, context) ??
      evaporated(frame, context) ??
      ranIn(frame, context) ??
      cardAnswer(primer('top-off')),
  },
];

/** After days without a top-off, with salt water in it, or with tank water going out as skimmate. */
function evaporated(frame: Frame, context: OwnContext): Answer | undefined {
  const { slots } = frame;
  const { container } = slots;
  const fallen = sunk(frame);
  const volume = fallen?.from ?? slots.volume;
  const said = levelsOf(slots, 'salinity', 'now', 'was').at(-1)?.text;
  const mix = levelsOf(slots, 'salinity', 'other').at(-1)?.text;
  const isSalt = mix !== undefined || isSaltWater(frame);
  // An amount alone is what went in: it replaced what evaporated only where salt water did.
  const each = fallen === undefined ? waterEach(slots) : undefined;
  const steady = each && perDays(each.amount, each.days);
  const gone =
    fallen?.gone ?? steady ?? (isSalt || isEvaporation(frame) ? (slots.amount ?? container) : undefined);
  if (gone === undefined) return undefined;
  const now = said ?? USUAL;
  const time = daysSaid(frame, context);
  const isOnce = steady === undefined && time.days === undefined;
  const days = isOnce ? '1 day' : time.days;
  const given = isSkimmed(frame)
    ? call(lostCommand, { now, volume, out: gone, days }, context)
    : call(
        forecastCommand,
        { now, volume, evaporation: gone, days, 'top-off': mix ?? (isSalt ? now : undefined) },
        context,
      );
  const usual = said === undefined ? [`no reading given, so ${USUAL}`] : [];
  const read = [...usual, ...time.read, ...given.read];
  return isOnce ? { ...atOnce(given), read } : { ...given, read };
}

/** What happened once has no days, and does not go on. */
function atOnce(given: Answer): Answer {
  const headline = given.headline
    .replace(/After 1 days?(?: with)?/, 'With')
    .replace('With it reads', 'It reads');
  return { ...given, headline, facts: [] };
}

/** Water that went into the air, told as such. */
function isEvaporation({ reading: { scanned } }: Frame): boolean {
  return met(scanned, 'deeds.evaporates');
}

/** Where a tank is taken to be that nobody read: the salinity of sea water. */
const USUAL = '35 ppt';

/** Salt water went where fresh water goes: all at once, or day by day. */
function isSaltWater({ slots: { amount }, reading: { scanned } }: Frame): boolean {
  if (isSaltTopOff(scanned)) return true;
  return amount !== undefined && met(scanned, 'substances.saltMix') && !met(scanned, 'substances.roWater');
}

/** Fresh water went in where the salt water of a change belongs. */
function freshForSalt({ slots, reading: { scanned } }: Frame, context: OwnContext): Answer | undefined {
  const now = levelsOf(slots, 'salinity', 'was', 'now').at(0)?.text ?? USUAL;
  const amount = slots.amount ?? slots.changed ?? slots.container;
  if (amount === undefined || !isFreshForSalt(scanned)) return undefined;
  return call(adjustCommand, { now, fresh: '0 ppt', amount, volume: slots.volume }, context);
}

/** What goes out is tank water, as foam: its salt goes with it. */
function isSkimmed({ reading: { scanned } }: Frame): boolean {
  return met(scanned, 'gear.skimmer') && !met(scanned, 'deeds.evaporates');
}

/** Fresh water that ran in: it reads less than it did, and no salt water was lost. */
function ranIn({ slots }: Frame, context: OwnContext): Answer | undefined {
  const now = levelsOf(slots, 'salinity', 'now').at(-1)?.text;
  const usual = levelsOf(slots, 'salinity', 'was', 'wanted', 'target').at(0)?.text;
  if (now === undefined || usual === undefined) return undefined;
  return call(excessCommand, { now, usual, volume: slots.volume }, context);
}
