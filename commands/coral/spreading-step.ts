import type { CoralEntry } from '../../core/corals/entry.ts';
import { fittingOf } from '../../core/corals/say.ts';
import { isSoft, spreads } from '../../core/corals/spreading.ts';

/** Common practice, no source: sand is the border that soft mats cross least. */
export function spreadingStep(entries: readonly CoralEntry[]): string | undefined {
  const names = [...new Set(entries)].filter((entry) => isSoft(entry) && spreads(entry));
  return names.length === 0
    ? undefined
    : `${fittingOf(
        names.map(({ names: { common } }) => common[0]),
        40,
      )} spreads: an island of its own, 15 cm (6 in) of bare sand round it.`;
}
