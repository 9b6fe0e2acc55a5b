import type { HandOver, Plan, Reminder } from '../../commands/reminder.ts';
import type { Notice } from './notices.ts';

export interface ExportedReminder extends Plan {
  readonly id: number;
  readonly nextAt: string | undefined;
  readonly againAt: string | undefined;
  readonly pausedFrom: string | undefined;
  readonly pausedUntil: string | undefined;
  readonly lastDoneAt: string | undefined;
  readonly trouble: string | undefined;
}

/** That there is one, not with whom: the other's id is the other's. So is the tank of one who handed theirs over. */
export interface ExportedHandOver {
  readonly id: number;
  readonly as: 'owner' | 'sitter';
  readonly tankId: number | undefined;
  readonly from: string;
  readonly until: string;
  readonly state: HandOver['state'];
}

export interface ExportedNotice {
  readonly text: string;
  readonly madeAt: string;
}

export function exportReminder({
  nextMs,
  againMs,
  pause,
  lastDoneMs,
  trouble,
  ...plan
}: Reminder): ExportedReminder {
  return {
    ...plan,
    nextAt: isoOrNone(nextMs),
    againAt: isoOrNone(againMs),
    pausedFrom: isoOrNone(pause?.fromMs),
    pausedUntil: isoOrNone(pause?.untilMs),
    lastDoneAt: isoOrNone(lastDoneMs),
    trouble,
  };
}

export function exportHandOver(handOver: HandOver, discordId: string): ExportedHandOver {
  const { id, ownerId, tankId, fromMs, untilMs, state } = handOver;
  const isOwner = ownerId === discordId;
  return {
    id,
    as: isOwner ? 'owner' : 'sitter',
    tankId: isOwner ? tankId : undefined,
    from: iso(fromMs),
    until: iso(untilMs),
    state,
  };
}

export function exportNotice({ text, madeMs }: Notice): ExportedNotice {
  return { text, madeAt: iso(madeMs) };
}

export function iso(ms: number): string {
  return new Date(ms).toISOString();
}

function isoOrNone(ms: number | undefined): string | undefined {
  return ms === undefined ? undefined : iso(ms);
}
