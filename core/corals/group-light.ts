import { corals } from './coral-list.ts';
import type { CoralGroup } from './kind.ts';
import { lightFor, type CoralLight } from './light-need.ts';

const names: Readonly<Record<CoralGroup, string>> = {
  'large-polyp': 'large-polyp stony corals',
  'small-polyp': 'small-polyp stony corals',
  soft: 'soft corals',
  zoanthid: 'zoanthids',
  mushroom: 'mushrooms',
  anemone: 'anemones',
};

/** How the numbers of a group were found. */
export const USUAL_LIGHT_RULE = 'middle values of the ranges of that group in the guide, to the nearest 10';

/**
 * The light of a whole group, umol m-2 s-1: the medians of the ends of its entries that live by light, to the nearest
 * 10. Check: large-polyp 50 to 180, beginning near 90; common practice (no source) says 50 to 200 and just over 100.
 *
 * Doubt: the entries are common practice and memory, and each kind has its own range.
 */
export function usualLight(group: CoralGroup): CoralLight {
  const needs = corals
    .filter((entry) => entry.group === group && entry.photosynthetic)
    .map((entry) => lightFor(entry, 'tank-grown'));
  const [first] = needs;
  if (first === undefined) throw new Error(`no coral of the group ${group}`);
  return {
    ...first,
    lowPpfd: middle(needs.map(({ lowPpfd }) => lowPpfd)),
    highPpfd: middle(needs.map(({ highPpfd }) => highPpfd)),
    startPpfd: middle(needs.map(({ startPpfd }) => startPpfd)),
    rangeBasis: 'project rule: middle of the guide',
    startBasis: 'project rule: middle of the guide',
  };
}

/** "Usual for soft corals: 80 to 250 PAR, beginning near 100 (project rule: middle of the guide)." */
export function usualLightWords(group: CoralGroup): string {
  const { lowPpfd, highPpfd, startPpfd } = usualLight(group);
  return `Usual for ${names[group]}: ${lowPpfd} to ${highPpfd} PAR, beginning near ${startPpfd} (project rule: middle of the guide).`;
}

function middle(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return Math.round((sorted[Math.floor(sorted.length / 2)] ?? 0) / 10) * 10;
}
