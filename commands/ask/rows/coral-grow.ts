import { onlyEntry } from '../../../core/corals/named.ts';
import { spreads } from '../../../core/corals/spreading.ts';
import type { Frame } from '../../../core/language/frame.ts';
import { met } from '../../../core/language/met.ts';
import { primer } from '../../../core/care/primers/cards.ts';
import type { Answer } from '../../answer.ts';
import type { OwnContext } from '../../command.ts';
import { feedingLine } from '../../coral/about-lines.ts';
import { feedCommand } from '../../coral/feed.ts';
import { feedingAnswer } from '../../coral/feeding-answer.ts';
import type { foodKinds } from '../../coral/food-shares.ts';
import { growthLinesAnswer, growthsAnswer } from '../../coral/growth-answer.ts';
import { growthCommand } from '../../coral/growth.ts';
import { spreadingAnswer } from '../../coral/spreading-answer.ts';
import { zoanthidAnswer } from '../../coral/zoanthid-answer.ts';
import { cardAnswer } from '../../primer/card-answer.ts';
import { call } from '../../called.ts';
import type { Row } from '../row.ts';
import { looseOnRock } from './coral-place.ts';
import { coralsOf, linesFirst, noPageOf } from './coral-said.ts';
import { readableAs } from './readable-as.ts';

export const coralGrowRows: readonly Row[] = [
  {
    kind: 'growth',
    label: 'ask.kindGrowth',
    needs: [{ oneOf: ['corals'], ask: 'coral.whichCoral' }],
    uses: ['corals', 'lengths', 'heads', 'counts', 'span'],
    computes: ({ slots: { corals, lengths, heads } }) =>
      corals !== undefined && (corals.length > 2 || lengths !== undefined || heads !== undefined),
    answer: (frame, context) =>
      isToBeStopped(frame) ? spreadingAnswer() : (growthOf(frame, context) ?? noPageOf(frame)),
  },
  {
    kind: 'feed',
    label: 'ask.kindFeed',
    uses: ['corals', 'amount', 'volume'],
    computes: (frame) => frame.slots.amount !== undefined && foodOf(frame) !== undefined,
    answer: (frame, context) => addedBy(frame, context) ?? fed(frame, context),
  },
  {
    kind: 'fragging',
    label: 'ask.kindFragging',
    uses: ['corals'],
    computes: isZoanthid,
    answer: (frame) => (isZoanthid(frame) ? zoanthidAnswer('cut') : looseOnRock(frame)),
  },
];

function isZoanthid(frame: Frame): boolean {
  return coralsOf(frame).some(({ entries }) => entries.some(({ group }) => group === 'zoanthid'));
}

/** Something that wins by growing over its neighbours, and is to be held back. */
function isToBeStopped(frame: Frame): boolean {
  const { scanned } = frame.reading;
  const [one] = coralsOf(frame);
  const isSpreader = one === undefined || one.entries.some(spreads);
  const isSpeedAsked = met(scanned, 'manner.askFast', 'manner.askMuch');
  return isSpreader && !isSpeedAsked && met(scanned, 'lives.spreads', 'deeds.contains', 'deeds.scrapes');
}

function growthOf(frame: Frame, context: OwnContext): Answer | undefined {
  const named = coralsOf(frame);
  const [one] = named;
  if (one === undefined) return undefined;
  if (named.length > 1) return growthsAnswer(named.map(({ entries: [first] }) => first));
  const { heads, lengths } = frame.slots;
  const size = heads ?? lengths?.[0];
  const entry = onlyEntry(one);
  return size !== undefined || entry === undefined
    ? call(growthCommand, { coral: one.name, size }, context)
    : growthLinesAnswer(one.name, entry);
}

/** "does 5 g of pellets a day raise my nitrate": the most a feeding adds. */
function addedBy(frame: Frame, context: OwnContext): Answer | undefined {
  const { amount, volume } = frame.slots;
  const food = foodOf(frame);
  return amount === undefined || food === undefined || readableAs('mass', amount) === undefined
    ? undefined
    : call(feedCommand, { food, mass: amount, volume }, context);
}

function foodOf({ reading: { scanned } }: Frame): (typeof foodKinds)[number] | undefined {
  if (met(scanned, 'substances.frozenFood')) return 'frozen';
  if (met(scanned, 'substances.flakeFood')) return 'flake';
  return met(scanned, 'substances.pelletFood') ? 'pellet' : undefined;
}

function fed(frame: Frame, context: OwnContext): Answer {
  const [one] = coralsOf(frame);
  if (one === undefined) return noPageOf(frame) ?? cardAnswer(primer('feeding'));
  const entry = onlyEntry(one);
  return entry === undefined
    ? linesFirst(one, (kind) => [feedingLine(kind)], context)
    : feedingAnswer(one.name, entry);
}
