import type { FlowBand } from '../../../core/corals/entry.ts';
import type { Level } from '../../../core/corals/suits.ts';
import type { Frame } from '../../../core/language/frame.ts';
import { met } from '../../../core/language/met.ts';
import type { Answer } from '../../answer.ts';
import type { OwnContext } from '../../command.ts';
import { checkCoralsCommand } from '../../coral/check.ts';
import { gentleAnswer } from '../../coral/gentle-answer.ts';
import { pairHeadline } from '../../coral/pair-headline.ts';
import { pairFacts, pairsOf } from '../../coral/pairs-answer.ts';
import { softBesideStony } from '../../coral/soft-beside-stony.ts';
import { suitedCommand } from '../../coral/suited.ts';
import { call } from '../../called.ts';
import type { Row } from '../row.ts';
import { isSoftBesideStony } from './coral-pair.ts';
import { coralsOf, groupOf, parsOf } from './coral-said.ts';

/** Pairs told beside a plan. */
const MOST_PAIRS = 4;

export const tankPlanRows: readonly Row[] = [
  {
    kind: 'tank-plan',
    label: 'Which corals fit my tank',
    uses: ['corals', 'light', 'counts'],
    answer: (frame, context) => {
      const { scanned } = frame.reading;
      const named = coralsOf(frame);
      if (named.length === 0 && asksOfOwn(frame, context)) return call(checkCoralsCommand, {}, context);
      if (named.length === 0 && met(scanned, 'manner.negation') && met(scanned, 'lives.stings'))
        return gentleAnswer();
      if (named.length === 0 && isSoftBesideStony(frame)) return softBesideStony();
      return withPairs(frame, suitedOf(frame, context));
    },
  },
];

/** "are my corals too close": of those that are kept, where nothing else is named. */
function asksOfOwn({ slots, reading: { scanned } }: Frame, { keep }: OwnContext): boolean {
  const tank = keep?.tankInUse();
  if (keep === undefined || tank === undefined || slots.volume !== undefined) return false;
  return keep.corals(tank.id).length > 0 && met(scanned, 'manner.ownThing', 'deeds.shows');
}

/** What fits, from what is said of the spot and of the keeper. */
export function suitedOf(frame: Frame, context: OwnContext): Answer {
  const { scanned } = frame.reading;
  const [reading] = parsOf(frame);
  const isLow = reading === undefined && met(scanned, 'places.shade');
  const isHigh = reading === undefined && !isLow && met(scanned, 'places.highLight');
  const wish = coralsOf(frame).map(({ name }) => name);
  const found = call(
    suitedCommand,
    {
      level: levelOf(frame),
      par: reading?.text ?? (isLow ? '60 PAR' : isHigh ? '240 PAR' : undefined),
      flow: flowOf(frame),
      ground: met(scanned, 'places.rock') ? 'rock' : met(scanned, 'places.sand') ? 'sand' : undefined,
      kind: groupOf(frame),
      wish: wish.length === 0 ? undefined : wish.join(', '),
    },
    context,
  );
  return {
    ...found,
    read: [
      ...found.read,
      ...(isLow
        ? ['low light taken as 60 PAR, the middle of soft light, 40 to 80 (project rule)']
        : isHigh
          ? ['high light taken as 240 PAR, the middle of bright light, 160 to 320 (project rule)']
          : []),
    ],
  };
}

/** Which of those wished for must stand apart: they may fit the tank and not each other. */
function withPairs(frame: Frame, plan: Answer): Answer {
  const apart = pairsOf(coralsOf(frame)).filter(({ pair }) => pair.moveBelowCm > 0);
  const [worst] = apart;
  if (worst === undefined) return plan;
  const facts = pairFacts(apart.slice(0, MOST_PAIRS).map(({ pair }) => pair));
  return {
    ...plan,
    headline: `${pairHeadline(worst.pair, undefined)} ${plan.headline}`,
    facts: [...facts, ...plan.facts],
  };
}

function levelOf({ reading: { scanned } }: Frame): Level | undefined {
  return met(scanned, 'manner.beginner', 'deeds.setsUp') ? 'first year' : undefined;
}

function flowOf({ reading: { scanned } }: Frame): FlowBand | undefined {
  if (met(scanned, 'places.stillWater')) return 'low';
  if (met(scanned, 'places.strongFlow')) return 'high';
  return met(scanned, 'places.mediumFlow') ? 'medium' : undefined;
}
