import type { Store } from '../../bot/store/open.ts';

/** Leaves a notice for someone, as the clock loop does when a reminder of theirs cannot be delivered. */
export function leaveNotice(store: Store, personId: string, nowMs: number, notice: string): void {
  const anchor = '2023-11-01 09:00';
  const place = { kind: 'direct' } as const;
  const plan = {
    text: 'rinse the sponge',
    parameters: [],
    anchor,
    zone: 'UTC',
    rule: { every: 'once' },
    place,
  } as const;
  const { id } = store.keepFor(personId).addReminder(plan, { nextMs: nowMs - 1000 });
  const claimed = store.due.claim(nowMs, 10, 60_000).find(({ reminder }) => reminder.id === id);
  if (claimed === undefined) throw new Error('nothing is due');
  store.due.stop(id, claimed.dueMs, { trouble: notice }, notice);
}
