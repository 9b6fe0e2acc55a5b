import type { CoralEntry } from '../../core/corals/entry.ts';
import { lightFor, type CoralLight } from '../../core/corals/light-need.ts';
import type { NamedCoral } from '../../core/corals/named.ts';
import type { Fact } from '../answer.ts';

/** What all that a name can mean takes together; the lowest of their starts. */
export function needOf(entries: NamedCoral['entries']): CoralLight {
  const needs = entries.map((entry) => lightFor(entry, 'unknown'));
  return {
    ...lightFor(entries[0], 'unknown'),
    photosynthetic: true,
    lowPpfd: Math.min(...needs.map(({ lowPpfd }) => lowPpfd)),
    highPpfd: Math.max(...needs.map(({ highPpfd }) => highPpfd)),
    startPpfd: Math.min(...needs.map(({ startPpfd }) => startPpfd)),
    rangeBasis: [...new Set(needs.map(({ rangeBasis }) => rangeBasis))].join('; '),
  };
}

export function lightFact(entry: CoralEntry): Fact {
  const { lowPpfd, highPpfd, startPpfd, startBasis } = lightFor(entry, 'unknown');
  return {
    label: entry.names.common[0],
    value: `${lowPpfd} to ${highPpfd} PAR; a new piece begins near ${startPpfd} (${startBasis})`,
  };
}
