import { describe, expect, it } from 'vitest';
import type { DueReminder } from '../../../bot/clock/due.ts';
import type { Progress } from '../../../commands/reminder.ts';
import { ADA, atHour, BEA, handClock, HOUR_MS, newFile, NOW_MS, opened, planned, raw } from './place.ts';

const LEASE_MS = 120_000;

function oneDue(progress: Progress = { nextMs: NOW_MS }) {
  const store = opened();
  const keep = store.keepFor(ADA);
  const { id } = keep.addReminder(planned('test'), progress);
  const claim = (atMs = NOW_MS): readonly DueReminder[] => store.due.claim(atMs, 10, LEASE_MS);
  return { store, keep, id, claim, due: store.due };
}

describe('a claim', () => {
  it('takes what is due, the longest due first, at most so many, whoever it is of', () => {
    const store = opened();
    const hours = [-1, -5, 3, -3, 0];
    for (const [i, hour] of hours.entries())
      store.keepFor(i % 2 === 0 ? ADA : BEA).addReminder(planned(`${hour}`), { nextMs: atHour(hour) });
    const texts = (most: number): string[] =>
      store.due.claim(NOW_MS, most, LEASE_MS).map(({ reminder }) => reminder.text);
    expect([texts(2), texts(0), texts(5), texts(5)]).toEqual([['-5', '-3'], [], ['-1', '0'], []]);
  });

  it('says whose it is, what is due and when', () => {
    const { claim, keep, id } = oneDue({ nextMs: atHour(1), againMs: NOW_MS });
    const [reminder] = keep.reminders();
    expect(claim()).toEqual([{ reminder, ownerId: ADA, handOver: undefined, dueMs: NOW_MS, attempts: 0 }]);
    expect(reminder?.id).toBe(id);
  });

  it('gives back what was not settled when the lease is over, and counts', () => {
    const { claim } = oneDue();
    const attempts = [0, 1, LEASE_MS - 1, LEASE_MS, LEASE_MS + 1, 2 * LEASE_MS].map((ms) =>
      claim(NOW_MS + ms).map((due) => due.attempts),
    );
    expect(attempts).toEqual([[0], [], [], [1], [], [2]]);
  });

  it('is kept by the file: the next bot waits for the lease, and knows of the attempt', () => {
    const file = newFile();
    const store = opened(file);
    store.keepFor(ADA).addReminder(planned('test'), { nextMs: NOW_MS });
    expect(store.due.claim(NOW_MS, 5, LEASE_MS)).toHaveLength(1);
    store.close();
    const next = opened(file);
    expect(next.due.claim(NOW_MS + 1, 5, LEASE_MS)).toEqual([]);
    expect(next.due.claim(NOW_MS + LEASE_MS, 5, LEASE_MS)).toMatchObject([{ attempts: 1, dueMs: NOW_MS }]);
  });

  it.each<[string, Progress]>([
    ['over', {}],
    ['stopped', { nextMs: NOW_MS, trouble: 'no' }],
    ['paused', { nextMs: NOW_MS, pause: { fromMs: NOW_MS } }],
    ['paused since it was due', { nextMs: atHour(-2), pause: { fromMs: atHour(-1) } }],
  ])('leaves one that is %s', (_, progress) => {
    const { claim } = oneDue(progress);
    expect([claim(), claim(atHour(1e5))]).toEqual([[], []]);
  });

  it('takes one whose pause is over, late, and fills the batch past those that are paused', () => {
    const { claim, keep, store } = oneDue({
      nextMs: atHour(-2),
      pause: { fromMs: atHour(-1), untilMs: atHour(1) },
    });
    keep.addReminder(planned('other'), { nextMs: NOW_MS });
    expect(store.due.claim(NOW_MS, 1, LEASE_MS).map(({ reminder }) => reminder.text)).toEqual(['other']);
    expect(claim(atHour(1) - 1).map(({ reminder }) => reminder.text)).toEqual(['other']);
    expect(claim(atHour(2))).toMatchObject([
      { reminder: { text: 'other' } },
      { dueMs: atHour(-2), attempts: 0 },
    ]);
  });

  it('finds its rows by the index of what waits, without a sort', () => {
    const file = newFile();
    opened(file).close();
    const plan = raw(file, (db) =>
      db
        .prepare<[], { detail: string }>(
          'EXPLAIN QUERY PLAN SELECT * FROM reminder WHERE wake_ms <= 1 ORDER BY wake_ms, id LIMIT 50',
        )
        .all(),
    ).map(({ detail }) => detail);
    expect(plan).toEqual(['SEARCH reminder USING INDEX reminder_wake (wake_ms<?)']);
  });
});

describe('what was claimed', () => {
  it('is settled once, and due again at its next time with no attempt', () => {
    const { claim, due, id, keep } = oneDue();
    claim();
    claim(NOW_MS + LEASE_MS);
    due.settle(id, NOW_MS, { nextMs: atHour(24) });
    expect(keep.reminders()[0]).toMatchObject({ nextMs: atHour(24), againMs: undefined });
    expect(claim(atHour(23))).toEqual([]);
    expect(claim(atHour(24))).toMatchObject([{ dueMs: atHour(24), attempts: 0 }]);
    due.settle(id, NOW_MS, { nextMs: atHour(99) });
    expect(keep.reminders()[0]?.nextMs, 'settled by an old instant').toBe(atHour(24));
  });

  it('is put off once a claim, and the attempt stays counted', () => {
    const { claim, due, id } = oneDue();
    claim();
    due.putOff(id, NOW_MS, atHour(1));
    due.putOff(id, NOW_MS, atHour(0));
    expect([claim(atHour(1) - 1), claim(atHour(1))]).toMatchObject([[], [{ dueMs: NOW_MS, attempts: 1 }]]);
    due.putOff(id, NOW_MS, atHour(2));
    expect(claim(atHour(2))).toMatchObject([{ attempts: 2 }]);
    due.settle(id, NOW_MS, { nextMs: atHour(3) });
    expect(claim(atHour(3))).toMatchObject([{ attempts: 0 }]);
  });

  it('is not put off unless it was claimed', () => {
    const { claim, due, id } = oneDue();
    due.putOff(id, NOW_MS, atHour(1));
    expect(claim()).toHaveLength(1);
  });

  it('is stopped with a notice that the owner gets once', () => {
    const { claim, due, id, keep, store } = oneDue();
    claim();
    due.stop(id, NOW_MS, { trouble: 'The channel is gone.' }, 'I could not remind you.');
    expect(keep.reminders()[0]).toMatchObject({ trouble: 'The channel is gone.', nextMs: undefined });
    expect(claim(atHour(99))).toEqual([]);
    expect(store.keepFor(BEA).takeNotices()).toEqual([]);
    expect([keep.takeNotices(), keep.takeNotices()]).toEqual([['I could not remind you.'], []]);
  });
});

describe('a change by the member while it is sent', () => {
  it.each<[string, (of: ReturnType<typeof oneDue>) => unknown]>([
    ['another time', ({ keep, id }) => keep.changeReminder(id, planned('new'), { nextMs: atHour(5) })],
    [
      'done',
      ({ keep, id }) => keep.moveReminder(id, '2026-03-14 09:00', { nextMs: atHour(5), lastDoneMs: NOW_MS }),
    ],
    ['over', ({ keep, id }) => keep.moveReminder(id, '2026-03-14 09:00', { lastDoneMs: NOW_MS })],
    ['removed', ({ keep, id }) => keep.removeReminder(id)],
    ['erased', ({ keep }) => keep.eraseAll()],
  ])('wins over settle, stop and putOff: %s', (_, change) => {
    const of = oneDue();
    of.claim();
    change(of);
    const changed = of.keep.reminders();
    of.due.settle(of.id, NOW_MS, { nextMs: atHour(24) });
    of.due.stop(of.id, NOW_MS, { trouble: 'no' }, 'notice');
    of.due.putOff(of.id, NOW_MS, atHour(9));
    expect(of.keep.reminders()).toEqual(changed);
    expect(of.keep.takeNotices()).toEqual([]);
    expect(of.claim(atHour(5)).length).toBe(changed[0]?.nextMs === undefined ? 0 : 1);
  });

  it('that leaves it due does not send it twice, and what was changed stays', () => {
    const { claim, due, id, keep } = oneDue();
    claim();
    const pause = { fromMs: atHour(20), untilMs: atHour(30) };
    keep.changeReminder(id, planned('new words'), {
      nextMs: NOW_MS,
      againMs: atHour(3),
      pause,
      lastDoneMs: 5,
    });
    expect(claim(NOW_MS + 1)).toEqual([]);
    due.settle(id, NOW_MS, { nextMs: atHour(24) });
    expect(keep.reminders()[0]).toEqual({
      ...planned('new words'),
      id,
      nextMs: atHour(24),
      againMs: atHour(3),
      pause,
      lastDoneMs: 5,
    });
  });

  it('that pauses it without an end is not undone by putting it off', () => {
    const { claim, due, id, keep } = oneDue();
    claim();
    keep.moveReminder(id, '2026-03-14 09:00', { nextMs: NOW_MS, pause: { fromMs: NOW_MS } });
    due.putOff(id, NOW_MS, atHour(1));
    expect(claim(atHour(2))).toEqual([]);
    keep.moveReminder(id, '2026-03-14 09:00', { nextMs: NOW_MS });
    expect(claim(atHour(2))).toHaveLength(1);
  });
});

describe('five thousand due at once', () => {
  it('are claimed in batches, each exactly once', () => {
    const file = newFile();
    const clock = handClock();
    const store = opened(file, clock.read);
    const members = Array.from({ length: 100 }, (_, i) =>
      store.keepFor(String(100_000_000_000_000_100n + BigInt(i))),
    );
    for (const keep of members)
      keep.addReminders(Array.from({ length: 50 }, (_, i) => [planned(`${i}`), { nextMs: NOW_MS }] as const));
    const times = new Map<number, number>();
    for (let batch = 0; batch < 100; batch++) {
      const rows = store.due.claim(NOW_MS + HOUR_MS, 50, LEASE_MS);
      expect(rows).toHaveLength(50);
      for (const { reminder, dueMs } of rows) {
        times.set(reminder.id, (times.get(reminder.id) ?? 0) + 1);
        if (batch % 2 === 0) store.due.settle(reminder.id, dueMs, { nextMs: atHour(24) });
      }
    }
    expect(store.due.claim(NOW_MS + HOUR_MS, 50, LEASE_MS)).toEqual([]);
    expect([times.size, new Set(times.values())]).toEqual([5000, new Set([1])]);
  });
});
