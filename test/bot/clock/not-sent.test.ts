import { describe, expect, it } from 'vitest';
import type { Posted } from '../../../bot/clock/post.ts';
import { channelId, dayMs, duesOf, hourMs, minuteMs, openRoom, ownerId, serverId } from './room.ts';

const gone: Posted = { kind: 'gone', why: 'it is closed' };
const later: Posted = { kind: 'later' };
const sentOk: Posted = { kind: 'sent' };
const inChannel = { kind: 'channel', serverId, channelId } as const;

describe('what cannot be sent now', () => {
  it('is tried again 1, 2, 4 and more minutes later, at most an hour, and never lost', async () => {
    const room = openRoom();
    room.remind({ rule: { every: 'once' } });
    room.answering = () => later;
    room.begin();
    await room.clock.pass(6 * hourMs);
    const gaps = room.sent
      .slice(1)
      .map(({ atMs }, index) => (atMs - (room.sent[index]?.atMs ?? 0)) / minuteMs);
    const wanted = [1, 2, 4, 8, 16, 32, 60, 60];
    for (const [index, gap] of wanted.entries()) {
      expect(gaps[index]).toBeGreaterThanOrEqual(gap);
      expect(gaps[index]).toBeLessThanOrEqual(gap + 0.25);
    }
    expect(room.sent.map(({ letter }) => letter.attempts).slice(0, 4)).toEqual([0, 1, 2, 3]);
    expect(new Set(room.sent.map(({ letter }) => letter.nonce)).size).toBe(1);
    room.sent.length = 0;
    room.answering = () => sentOk;
    await room.clock.doze(5 * dayMs);
    expect(room.sent).toHaveLength(1);
  });

  it('waits for as long as the platform says', async () => {
    const room = openRoom();
    room.remind({ rule: { every: 'once' } });
    room.answering = ({ attempts }) => (attempts === 0 ? { kind: 'later', afterMs: 10 * minuteMs } : sentOk);
    room.begin();
    await room.clock.pass(2 * hourMs);
    expect((room.sent[1]?.atMs ?? 0) - (room.sent[0]?.atMs ?? 0)).toBeGreaterThanOrEqual(10 * minuteMs);
    expect(room.sent).toHaveLength(2);
  });
});

describe('what cannot be delivered', () => {
  it('stops when direct messages are closed, with a notice, until it is resumed', async () => {
    const room = openRoom();
    const { id, anchor } = room.remind();
    room.answering = () => gone;
    room.begin();
    await room.clock.doze(3 * dayMs);
    expect(room.sent).toHaveLength(1);
    const [notice, ...others] = room.keep.takeNotices();
    expect(notice).toContain('change filter floss, due 2026-01-05 09:00, was not delivered: it is closed');
    expect(others).toEqual([]);
    expect(room.keep.reminders()[0]?.trouble).toContain('it is closed');
    room.answering = () => sentOk;
    room.keep.moveReminder(id, anchor, { nextMs: room.clock.nowMs() + hourMs });
    await room.clock.doze(dayMs);
    expect(duesOf(room.sent)).toEqual(['2026-01-05 09:00', '2026-01-08 09:00']);
  });

  it('goes from a channel to its owner, who reads why, and goes on', async () => {
    const room = openRoom();
    room.remind({ place: inChannel });
    room.answering = ({ place }) => (place.kind === 'channel' ? gone : sentOk);
    room.begin();
    await room.clock.doze(2 * dayMs);
    expect(room.sent.map(({ letter }) => letter.place.kind)).toEqual([
      'channel',
      'direct',
      'channel',
      'direct',
    ]);
    const why = room.sent[1]?.letter.answer.facts[0]?.value;
    expect(why).toBe('I could not post this in the channel: it is closed');
    expect(room.sent[1]?.letter.toPersonId).toBe(ownerId);
    expect(room.keep.takeNotices()).toEqual([]);
  });

  it('stops with a notice when neither the channel nor its owner takes it', async () => {
    const room = openRoom();
    room.remind({ place: inChannel });
    room.answering = () => gone;
    room.begin();
    await room.clock.doze(3 * dayMs);
    expect(room.sent.map(({ letter }) => letter.place.kind)).toEqual(['channel', 'direct']);
    expect(room.keep.takeNotices()).toHaveLength(1);
  });
});

describe('a pause', () => {
  it('lets what falls into it pass silently', async () => {
    const room = openRoom();
    const { id, anchor, nextMs } = room.remind();
    const untilMs = room.clock.nowMs() + 3 * dayMs;
    room.keep.moveReminder(id, anchor, { nextMs, pause: { fromMs: room.clock.nowMs(), untilMs } });
    room.begin();
    await room.clock.doze(5 * dayMs);
    expect(duesOf(room.sent)).toEqual(['2026-01-08 09:00', '2026-01-09 09:00']);
    expect(room.keep.takeNotices()).toEqual([]);
  });

  it('puts what comes only once off to its end', async () => {
    const room = openRoom();
    const { id, anchor, nextMs } = room.remind({ rule: { every: 'once' } });
    const untilMs = room.clock.nowMs() + dayMs;
    room.keep.moveReminder(id, anchor, { nextMs, pause: { fromMs: room.clock.nowMs(), untilMs } });
    room.begin();
    await room.clock.doze(3 * dayMs);
    expect(duesOf(room.sent)).toEqual(['2026-01-05 09:00']);
    expect(room.sent[0]?.atMs).toBeGreaterThanOrEqual(untilMs);
  });

  it('without an end lasts until it is taken away', async () => {
    const room = openRoom();
    const { id, anchor, nextMs } = room.remind();
    room.keep.moveReminder(id, anchor, { nextMs, pause: { fromMs: room.clock.nowMs() + dayMs } });
    room.begin();
    await room.clock.doze(10 * dayMs);
    expect(duesOf(room.sent)).toEqual(['2026-01-05 09:00']);
  });
});
