import { palytoxinCaution } from '../../core/corals/cautions.ts';
import type { CoralEntry } from '../../core/corals/entry.ts';

/** To stand before every other caution wherever one of the corals may hold palytoxin. */
export function palytoxinCautions(entries: readonly CoralEntry[]): readonly string[] {
  const holders = entries.filter(({ hazard }) => hazard?.palytoxin === true);
  if (holders.length === 0) return [];
  const names = new Set(holders.map(({ names: { common } }) => common[0]));
  return [`${[...names].join(', ')}: ${palytoxinCaution.text}.`];
}
