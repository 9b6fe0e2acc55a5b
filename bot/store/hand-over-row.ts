import type { HandOver } from '../../commands/reminder.ts';
import type { HandOverNews } from '../clock/due.ts';

export interface FoundHandOver {
  readonly id: number;
  readonly owner: number;
  readonly sitter: number;
  readonly ownerId: string;
  readonly sitterId: string;
  readonly tank: number | null;
  readonly fromMs: number;
  readonly untilMs: number;
  readonly state: HandOver['state'];
  readonly news: HandOverNews;
  readonly attempts: number;
}

/** Begins a statement that finds hand-overs with the Discord ids of both. */
export const selectHandOver = `
  SELECT hand_over.id, owner, sitter, owners.discord_id AS ownerId, sitters.discord_id AS sitterId, tank,
    from_ms AS fromMs, until_ms AS untilMs, state, news, attempts
  FROM hand_over
    CROSS JOIN person AS owners ON owners.id = hand_over.owner
    CROSS JOIN person AS sitters ON sitters.id = hand_over.sitter`;

export function handOverOf(row: FoundHandOver, nowMs: number): HandOver {
  const { id, ownerId, sitterId, tank, fromMs, untilMs } = row;
  const state = isOpen(row, nowMs) || row.state === 'declined' ? row.state : 'over';
  return { id, ownerId, sitterId, tankId: tank ?? undefined, fromMs, untilMs, state };
}

/** Neither declined nor over. */
export function isOpen({ state, untilMs }: FoundHandOver, nowMs: number): boolean {
  return (state === 'asked' || state === 'accepted') && nowMs < untilMs;
}
