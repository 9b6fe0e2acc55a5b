import type { CoralEntry } from '../../core/corals/entry.ts';
import type { NamedCoral } from '../../core/corals/named.ts';
import { isSoft } from '../../core/corals/spreading.ts';
import { fittingOf } from '../../core/corals/say.ts';
import { say } from '../../core/wording/say.ts';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import type { Gap } from './gap.ts';
import { palytoxinCautions } from './palytoxin-cautions.ts';
import { chemistryFacts, gapBasis, knownFacts, reachFact, roomFact, spreadFact } from './pair-facts.ts';
import { pairHeadline } from './pair-headline.ts';
import { shortFirst } from './short-first.ts';
import { worstOf } from './pair-worst.ts';

/** What is known of two corals side by side, and how much room they want; of all that the names can mean, the most. */
export function pairAnswer(one: NamedCoral, other: NamedCoral, gap?: Gap): Answer {
  const worst = worstOf(one, other);
  const { room, spreads } = worst;
  const { need } = room;
  return answer({
    headline: pairHeadline(worst, gap),
    read: [
      `${one.name}: ${nameList(one)}`,
      ...(one === other ? [] : [`${other.name}: ${nameList(other)}`]),
      ...(gap === undefined ? [] : [`${gap.text} between them, taken as edge to edge`]),
    ],
    facts: shortFirst([
      roomFact(worst),
      ...(spreads === undefined ? [] : [spreadFact(spreads)]),
      ...knownFacts(need),
      ...chemistryFacts(room),
      ...[...new Set([worst.a, worst.b])].map(reachFact),
    ]),
    steps: [
      ...(spreads === undefined || !isSoft(spreads) ? [] : [matStep(spreads)]),
      'Measure from the tips at full stretch, at night by a dim torch, not from the skeletons: both inflate and grow.',
      'Leave half as much again on the side the water goes to: sweepers travel with the flow.',
      'One side draws back, loses tissue or has whitish strings on it: move them apart the same day.',
      ...(worst.a.group === 'anemone' || worst.b.group === 'anemone'
        ? [
            'An anemone walks until it likes its spot: place it weeks before the corals, on a rock of its own.',
          ]
        : []),
      ...(one !== other && isEuphyllia(worst.a) && isEuphyllia(worst.b)
        ? ['Hammer beside frogspawn is usually tolerated; a torch is not one of them.']
        : []),
    ],
    working: gapBasis(need),
    dangers: palytoxinCautions([...one.entries, ...other.entries]),
    cautions: [
      'One family or one look does not make two corals safe together, and no distance is a promise: some pairs touch for years, others fight in a week.',
    ],
    sources: ['practice', 'memory'],
    next: [action(say('coral.placeOneInMyTank'), 'coral add', { coral: one.name }, ['at', 'size'])],
  });
}

function matStep({ names }: CoralEntry): string {
  return `Give ${names.common[0]} a rock of its own with bare sand round it: it grows over its neighbours.`;
}

/** So many letters of what a name can mean. */
const MOST_NAMES = 90;

function nameList({ entries }: NamedCoral): string {
  const names = entries.map(({ names: { common }, scientific }) => `${common[0]} (${scientific.accepted})`);
  return entries.length === 1
    ? (names[0] ?? '')
    : `${fittingOf(names, MOST_NAMES)}; I answer for the one that wants most room`;
}

function isEuphyllia({ tags }: CoralEntry): boolean {
  return tags.some((tag) => ['torch', 'hammer', 'frogspawn', 'octospawn'].includes(tag));
}
