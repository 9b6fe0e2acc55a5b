import type { FlowBand } from '../../../core/corals/entry.ts';
import type { Level } from '../../../core/corals/suits.ts';
import type { NamedCoral } from '../../../core/corals/named.ts';
import type { Frame } from '../../../core/language/frame.ts';
import { met } from '../../../core/language/met.ts';
import { standThere } from '../../../core/language/stands-there.ts';
import { lightsOfOne } from './light-of-one.ts';
import type { Answer } from '../../answer.ts';
import type { OwnContext } from '../../command.ts';
import { checkCoralsCommand } from '../../coral/check.ts';
import { gentleAnswer } from '../../coral/gentle-answer.ts';
import { lightsAnswer } from '../../coral/lights-answer.ts';
import { cm } from '../../../core/corals/say.ts';
import type { Pair } from '../../coral/pair-worst.ts';
import { pairFacts, pairsOf } from '../../coral/pairs-answer.ts';
import { softBesideStony } from '../../coral/soft-beside-stony.ts';
import { suitedCommand } from '../../coral/suited.ts';
import { call } from '../../called.ts';
import type { Row } from '../row.ts';
import { isSoftBesideStony } from './coral-pair.ts';
import { coralsOf, groupAsked, parsOf } from './coral-said.ts';
import { led } from './led.ts';
import { groundOf, isMiddleLight } from './spot-asked.ts';
import { tankWaterSaid } from './tank-said.ts';

/** Pairs told beside a plan. */
const MOST_PAIRS = 4;

export const tankPlanRows: readonly Row[] = [
  {
    kind: 'tank-plan',
    label: 'ask.kindTankPlan',
    uses: ['corals', 'light', 'counts', 'volume', 'lengths'],
    answer: (frame, context) => {
      const { scanned } = frame.reading;
      const named = coralsOf(frame);
      if (named.length === 0 && asksOfOwn(frame, context)) return call(checkCoralsCommand, {}, context);
      if (named.length === 0 && met(scanned, 'manner.negation') && met(scanned, 'lives.stings'))
        return gentleAnswer();
      if (named.length === 0 && isSoftBesideStony(frame)) return softBesideStony();
      return withSpots(frame, withPairs(frame, suitedOf(frame, context)));
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
function suitedOf(frame: Frame, context: OwnContext): Answer {
  const { scanned } = frame.reading;
  const ofOne = new Set(lightsOfOne(frame).map(({ par }) => par.text));
  const readings = parsOf(frame).filter(({ text }) => !ofOne.has(text));
  // From dim to bright somewhere: no light of one spot.
  const reading = readings.length === 1 ? readings[0] : undefined;
  const { wished: wish, standing } = wishOf(frame);
  const isLow = readings.length === 0 && met(scanned, 'places.shade');
  const isHigh = readings.length === 0 && !isLow && met(scanned, 'places.highLight');
  const isMiddle = readings.length === 0 && !isLow && !isHigh && isMiddleLight(frame);
  const found = call(
    suitedCommand,
    {
      level: levelOf(frame),
      par: reading?.text ?? (isLow ? '60 PAR' : isHigh ? '240 PAR' : undefined),
      flow: flowOf(frame),
      ground: groundOf(frame),
      kind: wish.length === 0 ? groupAsked(frame) : undefined,
      wish: listed(wish),
      beside: listed(standing),
      volume: tankWaterSaid(frame),
    },
    context,
  );
  return {
    ...found,
    read: [
      ...found.read,
      ...(readings.length > 1
        ? [
            `light of ${readings.map(({ text }) => text).join(' to ')}: the dim end for those that begin low, the bright end for the rest`,
          ]
        : []),
      ...(isLow
        ? ['low light taken as 60 PAR, the middle of soft light, 40 to 80 (project rule)']
        : isHigh
          ? ['high light taken as 240 PAR, the middle of bright light, 160 to 320 (project rule)']
          : isMiddle
            ? [
                'middle light, 80 to 160 PAR (project rule): what begins lower goes low or into shade, what begins higher is not for it',
              ]
            : []),
    ],
  };
}

/** The corals named, those wished for and those that stand there already. */
function wishOf(frame: Frame): {
  readonly wished: readonly NamedCoral[];
  readonly standing: readonly NamedCoral[];
} {
  const there = new Set(standThere(frame.reading.scanned).map(({ id }) => id));
  const named = coralsOf(frame);
  return {
    wished: named.filter(({ name }) => !there.has(name)),
    standing: named.filter(({ name }) => there.has(name)),
  };
}

/** Soft beside stony where one of them stands there, and a light that was said of one coral's spot alone. */
function withSpots(frame: Frame, plan: Answer): Answer {
  const { standing } = wishOf(frame);
  const soft = standing.length > 0 && isSoftBesideStony(frame) ? softBesideStony() : undefined;
  const lit = lightsOfOne(frame);
  const first = soft === undefined ? plan : led(soft.headline, plan);
  return {
    ...first,
    read: [...plan.read, ...lit.map(({ coral, par }) => `${par.text} as the light of ${coral.name} alone`)],
    facts: [
      ...lit.flatMap(({ coral, par }) => lightsAnswer([coral], [par]).facts),
      ...first.facts,
      ...(soft?.facts ?? []),
    ],
    steps: [...(soft?.steps.slice(0, 2) ?? []), ...plan.steps],
  };
}

function listed(named: readonly NamedCoral[]): string | undefined {
  return named.length === 0 ? undefined : named.map(({ name }) => name).join(', ');
}

/** Which of those wished for must stand apart: they may fit the tank and not each other. */
function withPairs(frame: Frame, plan: Answer): Answer {
  const { wished, standing } = wishOf(frame);
  const apart = pairsOf([...wished, ...standing]).filter(
    ({ names, pair }) => pair.moveBelowCm > 0 && !names.every((one) => standing.includes(one)),
  );
  const [worst] = apart;
  if (worst === undefined) return plan;
  const facts = pairFacts(apart.slice(0, MOST_PAIRS).map(({ pair }) => pair));
  return led(apartWords(worst.pair), { ...plan, facts: [...facts, ...plan.facts] });
}

function apartWords({ a, b, moveBelowCm }: Pair): string {
  const [one, other] = [a.names.common[0], b.names.common[0]];
  return `Keep ${one} and ${other} ${cm(moveBelowCm)} apart.`;
}

function levelOf({ reading: { scanned } }: Frame): Level | undefined {
  return met(scanned, 'manner.beginner', 'deeds.setsUp') ? 'first year' : undefined;
}

function flowOf({ reading: { scanned } }: Frame): FlowBand | undefined {
  if (met(scanned, 'places.stillWater')) return 'low';
  if (met(scanned, 'places.strongFlow')) return 'high';
  return met(scanned, 'places.mediumFlow') ? 'medium' : undefined;
}
