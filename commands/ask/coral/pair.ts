import { basisName } from '../../../core/corals/basis-words.ts';
import type { PairEffect } from '../../../core/corals/pair-rules.ts';
import { cmRange } from '../../../core/corals/say.ts';
import { pairRoom, type PairRoom } from '../../../core/corals/pair-room.ts';
import type { PairNeed } from '../../../core/corals/reach.ts';
import { clearOfCm, isSoft, spreaderOf } from '../../../core/corals/spreading.ts';
import type { CoralEntry } from '../../../core/corals/entry.ts';
import type { NamedCoral } from '../../../core/words/corals.ts';
import { answer, type Fact } from '../../answer.ts';
import { action } from '../../calls.ts';
import type { Intent } from '../intent.ts';
import { cmAndInches, lengthIn } from './lengths.ts';
import { chemistryFacts, spreadFact } from './pair-facts.ts';
import { pairIn } from './pair-named.ts';
import { palytoxinCautions } from './palytoxin.ts';

/** "Can torch and hammer sit next to each other?": what is known of the two, and how much room they want. */
export const pairIntent: Intent = (heard) => {
  const pair = pairIn(heard);
  if (pair === undefined || (isZoanthid(pair[0]) && isZoanthid(pair[1]))) return undefined;
  const [one, other] = pair;
  const worst = worstOf(one, other);
  const { room, spreads } = worst;
  const { need } = room;
  const gap = lengthIn(heard);
  const [first, second] = [worst.a.names.common[0], worst.b.names.common[0]];
  return answer({
    headline: headline(first, second, worst, gap),
    read: [
      `${one.name}: ${nameList(one)}`,
      ...(one === other ? [] : [`${other.name}: ${nameList(other)}`]),
      ...(gap === undefined ? [] : [`${gap.text} between them, taken as edge to edge`]),
    ],
    facts: [
      roomFact(worst),
      ...[...new Set([worst.a, worst.b])].map(reachFact),
      ...(spreads === undefined ? [] : [spreadFact(spreads)]),
      ...chemistryFacts(room),
      ...factsOf(need),
    ],
    steps: [
      ...(spreads === undefined || !isSoft(spreads) ? [] : [matStep(spreads)]),
      'Measure from the tips at full stretch, at night with a dim torch, not from skeleton to skeleton: both inflate and grow.',
      'Leave half as much again on the side the water goes to: sweepers travel with the flow.',
      'Signs that they reach each other: one side draws back or loses tissue, or whitish strings lie on it. Then move them apart the same day.',
      ...(worst.a.group === 'anemone' || worst.b.group === 'anemone'
        ? [
            'An anemone walks until it likes its spot: place it first, let it settle for weeks, and give it a rock of its own.',
          ]
        : []),
      ...(one !== other && isEuphyllia(worst.a) && isEuphyllia(worst.b)
        ? ['Hammer beside frogspawn is usually tolerated; a torch is not one of them.']
        : []),
    ],
    working: basisOf(need),
    cautions: [
      ...palytoxinCautions([...one.entries, ...other.entries]),
      'One family or one look does not make two corals safe together, and no distance is a promise: some pairs touch for years, others fight in a week.',
    ],
    sources: ['practice', 'memory'],
    next: [action('Place one in my tank', 'coral add', { coral: one.name }, ['at', 'size'])],
  });
};

const kind: ReadonlySet<PairEffect> = new Set(['tolerated', 'usually tolerated']);

function getOn({ facts }: PairNeed): boolean {
  return facts.ally !== undefined || facts.rules.some(({ rule }) => kind.has(rule.effect));
}

function isZoanthid({ entries }: NamedCoral): boolean {
  return entries[0].group === 'zoanthid';
}

interface Pair {
  readonly a: CoralEntry;
  readonly b: CoralEntry;
  readonly room: PairRoom;
  /** The one that grows over the other. */
  readonly spreads: CoralEntry | undefined;
  readonly moveBelowCm: number;
  readonly watchBelowCm: number;
}

/** Of all that the two names can mean, the pair that wants most room. */
function worstOf(one: NamedCoral, other: NamedCoral): Pair {
  const pairs =
    one === other
      ? one.entries.map((a) => pairOf(a, a))
      : one.entries.flatMap((a) => other.entries.map((b): Pair => pairOf(a, b)));
  const [first, ...rest] = pairs;
  if (first === undefined) throw new Error('a name without a coral');
  return rest.reduce((worst, pair) => (wants(pair) > wants(worst) ? pair : worst), first);
}

function pairOf(a: CoralEntry, b: CoralEntry): Pair {
  const room = pairRoom(a, b);
  const spreads = spreaderOf(a, b);
  const clearCm = spreads === undefined ? 0 : clearOfCm(spreads);
  const { moveBelowCm, watchBelowCm } = room;
  return { a, b, room, spreads, moveBelowCm, watchBelowCm: Math.max(watchBelowCm, clearCm) };
}

function wants({ moveBelowCm, watchBelowCm }: Pair): number {
  return moveBelowCm * 1000 + watchBelowCm;
}

function matStep({ names }: CoralEntry): string {
  return `Give ${names.common[0]} a rock of its own with bare sand round it, and act early: it grows over its neighbours.`;
}

function headline(
  one: string,
  other: string,
  { room: { need }, moveBelowCm, watchBelowCm, spreads }: Pair,
  gap: ReturnType<typeof lengthIn>,
): string {
  const pair = one === other ? `two pieces of ${one}` : `${one} and ${other}`;
  const room = moveBelowCm > 0 ? cmAndInches(moveBelowCm) : cmAndInches(watchBelowCm);
  if (gap === undefined) {
    if (moveBelowCm > 0) return `Not touching: ${pair} want ${room} or more between them, at full stretch.`;
    if (spreads !== undefined && isSoft(spreads))
      return `Not on one rock: ${spreads.names.common[0]} grows over its neighbours. Keep ${pair} ${room} apart or more, with bare sand between.`;
    if (getOn(need))
      return `Usually yes: ${pair} are mostly left standing close; ${watchBelowCm > 0 ? `watch them below ${room}` : 'leave room to grow'}.`;
    return watchBelowCm > 0
      ? `Perhaps: give ${pair} ${room} or more, and watch them at night.`
      : `I know of nothing against ${pair} side by side; leave room to grow.`;
  }
  if (gap.cm < moveBelowCm)
    return `Too close: ${pair} want ${room} or more between them at full stretch, and ${cmAndInches(gap.cm)} is not enough.`;
  return gap.cm < watchBelowCm
    ? `Watch them: ${cmAndInches(gap.cm)} between ${pair} is within what one of them can reach or grow over.`
    : `Room enough as far as is known: ${cmAndInches(gap.cm)} between ${pair}${watchBelowCm > 0 ? `, who want ${room}` : ''}. Watch the first nights.`;
}

function roomFact({ room: { need }, moveBelowCm, watchBelowCm }: Pair): Fact {
  const [rule] = need.facts.rules;
  const own = rule === undefined ? 'from their reach' : basisName(rule.rule.gapBasis);
  const basis = watchBelowCm > need.watchBelowCm ? 'project rule' : own;
  return {
    label: 'room between them',
    value: `${moveBelowCm > 0 ? `move below ${cmAndInches(moveBelowCm)}, ` : ''}watch below ${cmAndInches(watchBelowCm)} (${basis})`,
  };
}

function reachFact({ names, sting }: CoralEntry): Fact {
  const { reachLowCm, reachHighCm, reachBasis, when } = sting;
  return {
    label: `reach of ${names.common[0]}`,
    value: `${cmRange(reachLowCm, reachHighCm)} at full stretch (${basisName(reachBasis)}), ${when === 'both' ? 'day and night' : `mostly by ${when}`}`,
  };
}

function factsOf({ facts }: PairNeed): readonly Fact[] {
  return [
    ...facts.rules.map(({ rule }) => ({
      label: 'what is known',
      value: `${rule.effect} (${basisName(rule.effectBasis)})${rule.note === undefined ? '' : `: ${rule.note}`}`,
    })),
    ...(facts.ally === undefined
      ? []
      : [
          {
            label: 'lives beside',
            value: `${facts.ally.text}, ${facts.ally.confidence} (${basisName(facts.ally.basis)})`,
          },
        ]),
    ...(facts.disagree ? [{ label: 'sources differ', value: 'the stronger warning is kept' }] : []),
  ];
}

function basisOf({ facts }: PairNeed): readonly string[] {
  return facts.rules.map(
    ({ rule }) => `The gap of ${cmAndInches(rule.gapCm)} rests on: ${basisName(rule.gapBasis)}`,
  );
}

function nameList({ entries }: NamedCoral): string {
  const names = entries
    .slice(0, 4)
    .map(({ names: { common }, scientific }) => `${common[0]} (${scientific.accepted})`);
  return entries.length === 1
    ? (names[0] ?? '')
    : `${names.join(', or ')}; I answer for the one that wants most room`;
}

function isEuphyllia({ tags }: CoralEntry): boolean {
  return tags.some((tag) => ['torch', 'hammer', 'frogspawn', 'octospawn'].includes(tag));
}
