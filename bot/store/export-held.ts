import { iso } from './export-reminders.ts';
import type { KeptHeld } from './held.ts';

/** An answer, or a call of a button, that can be opened again. */
export interface ExportedHeld extends Pick<KeptHeld, 'id' | 'kind' | 'isPrivate'> {
  readonly heldSince: string;
  readonly body: unknown;
}

export function exportHeld({ id, kind, isPrivate, madeMs, body }: KeptHeld): ExportedHeld {
  return { id, kind, isPrivate, heldSince: iso(madeMs), body: JSON.parse(body) };
}
