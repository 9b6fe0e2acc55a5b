import { iso } from './export-reminders.ts';
import type { ShownTanks } from './shown-tanks.ts';

/** That a tank is shown, not to whom: the other's id is the other's. So is the tank of one who shows theirs. */
export interface ExportedShowing {
  readonly as: 'owner' | 'helper';
  readonly tankId: number | undefined;
  readonly until: string;
}

export function exportShowings(shownTanks: ShownTanks, person: number): readonly ExportedShowing[] {
  const byMe = shownTanks
    .shownBy(person)
    .map(({ tankId, untilMs }) => ({ as: 'owner' as const, tankId, until: iso(untilMs) }));
  const toMe = shownTanks
    .shownTo(person)
    .map(({ untilMs }) => ({ as: 'helper' as const, tankId: undefined, until: iso(untilMs) }));
  return [...byMe, ...toMe];
}
