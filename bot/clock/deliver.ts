import type { Keep } from '../../commands/keep.ts';
import { isSingle, settled } from '../../commands/remind/progress.ts';
import { dueOf, isPaused } from '../../commands/remind/wake.ts';
import type { Reminder } from '../../commands/reminder.ts';
import { localTime } from '../../core/words/when.ts';
import { say } from '../../core/wording/say.ts';
import { againMs } from './again.ts';
import type { Clock } from './clock.ts';
import { dueLetter, elsewhere } from './due-letter.ts';
import type { DueReminder, DueStore } from './due.ts';
import type { Post, Posted } from './post.ts';

export interface DeliveryParts {
  readonly due: DueStore;
  /** What the person of this id keeps. */
  readonly keepFor: (personId: string) => Keep;
  readonly post: Post;
  readonly clock: Clock;
}

/**
 * Sends one claimed reminder, once, however late. Where it cannot be delivered it goes to its owner's direct messages;
 * where those are closed it stops, and its owner is told at their next command. It is never put into a channel its
 * owner did not choose: others read those.
 */
export async function deliver(parts: DeliveryParts, claimed: DueReminder, hurry: AbortSignal): Promise<void> {
  const { due, clock } = parts;
  const { reminder, dueMs, attempts } = claimed;
  if (isPassedOver(reminder, dueMs))
    return due.settle(reminder.id, dueMs, settled(reminder, dueMs, clock.nowMs()));
  if (!isStillDue(parts, claimed)) return;
  const posted = await send(parts, claimed, hurry);
  const nowMs = clock.nowMs();
  if (posted.kind === 'later') return due.putOff(reminder.id, dueMs, againMs(nowMs, attempts, posted));
  const progress = settled(reminder, dueMs, nowMs);
  if (posted.kind === 'sent') return due.settle(reminder.id, dueMs, progress);
  const wasDue = localTime(dueMs, reminder.zone).slice(0, 16);
  const trouble = say('schedule.notDelivered', { time: wasDue, why: posted.why });
  const notice = say('schedule.notDeliveredStopped', {
    id: String(reminder.id),
    text: reminder.text,
    time: wasDue,
    why: posted.why,
  });
  due.stop(reminder.id, dueMs, { ...progress, nextMs: undefined, againMs: undefined, trouble }, notice);
}

async function send(
  { keepFor, post, clock }: DeliveryParts,
  claimed: DueReminder,
  hurry: AbortSignal,
): Promise<Posted> {
  const keep = keepFor(claimed.ownerId);
  const posted = await post.send(dueLetter(claimed, keep, clock.nowMs()), hurry);
  if (posted.kind !== 'gone') return posted;
  const other = elsewhere(claimed, keep, clock.nowMs(), posted.why);
  return other === undefined ? posted : post.send(other, hurry);
}

/** It fell due while its owner wanted nothing sent; what comes only once is sent after that. */
function isPassedOver(reminder: Reminder, dueMs: number): boolean {
  const { pause } = reminder;
  return pause !== undefined && isPaused(pause, dueMs) && !isSingle(reminder);
}

/** Its owner may have changed, done or removed it since it was claimed. */
function isStillDue({ keepFor }: DeliveryParts, { reminder, ownerId, dueMs }: DueReminder): boolean {
  const found = keepFor(ownerId).reminder(reminder.id);
  return found !== undefined && dueOf(found.reminder) === dueMs;
}
