import type { Told } from '../../commands/told.ts';
import { iso } from './export-reminders.ts';

/** The text of the last message and what was read of those before, in one thread or post. */
export interface ExportedTold extends Omit<Told, 'atMs'> {
  readonly lastAt: string;
}

export function exportTold({ atMs, ...told }: Told): ExportedTold {
  return { ...told, lastAt: iso(atMs) };
}
