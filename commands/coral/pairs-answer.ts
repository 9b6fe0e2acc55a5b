import type { NamedCoral } from '../../core/corals/named.ts';
import type { Answer, Fact } from '../answer.ts';
import { pairAnswer } from './pair-answer.ts';
import { pairHeadline } from './pair-headline.ts';
import { wants, worstOf, type Pair } from './pair-worst.ts';

/** Every two of several corals, those that want most room first. */
export function pairsOf(
  named: readonly NamedCoral[],
): readonly { readonly names: readonly [NamedCoral, NamedCoral]; readonly pair: Pair }[] {
  return named
    .flatMap((one, at) =>
      named.slice(at + 1).map((other) => ({ names: [one, other] as const, pair: worstOf(one, other) })),
    )
    .sort((a, b) => wants(b.pair) - wants(a.pair));
}

/** Three or more side by side: the two that want most room are the answer, the others follow. */
export function pairsAnswer(named: readonly NamedCoral[]): Answer | undefined {
  const [worst, ...others] = pairsOf(named);
  if (worst === undefined) return undefined;
  const first = pairAnswer(...worst.names);
  return {
    ...first,
    headline: `${first.headline} Of all these they want most room.`,
    facts: [...pairFacts(others.map(({ pair }) => pair)), ...first.facts],
  };
}

/** Each pair in a line. */
export function pairFacts(pairs: readonly Pair[]): readonly Fact[] {
  return pairs.map((pair) => ({
    label: `${pair.a.names.common[0]} + ${pair.b.names.common[0]}`,
    value: pairHeadline(pair, undefined),
  }));
}
