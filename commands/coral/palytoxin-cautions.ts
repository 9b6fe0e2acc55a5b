import { palytoxinLines } from '../../core/corals/cautions.ts';
import type { CoralEntry } from '../../core/corals/entry.ts';
import { namedDanger } from './named-danger.ts';

/** To stand before every other danger wherever one of the corals may hold palytoxin. */
export function palytoxinCautions(entries: readonly CoralEntry[]): readonly string[] {
  const holders = entries.filter(({ hazard }) => hazard?.palytoxin === true);
  const names = [...new Set(holders.map(({ names: { common } }) => common[0]))];
  return names.length === 0 ? [] : palytoxinDangers(names);
}

/** The first line names those it is said of. */
export function palytoxinDangers(names: readonly string[]): readonly string[] {
  return palytoxinLines().map((line, at) => (at === 0 ? namedDanger(names, line) : line));
}
