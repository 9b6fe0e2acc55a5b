import { describe, expect, it } from 'vitest';
import type { Posted } from '../../../bot/clock/post.ts';
import { profile } from '../discord/members.ts';
import { settle } from './fake-clock.ts';
import { dayMs, dueMsOf, duesOf, hourMs, localOf, minuteMs, openRoom, ownerId } from './room.ts';

const later: Posted = { kind: 'later' };
const sentOk: Posted = { kind: 'sent' };

describe('on time', () => {
  it('sends within 15 s of when it is due, and sets no longer timer', async () => {
    const room = openRoom();
    room.remind();
    room.begin();
    await room.clock.pass(2 * hourMs);
    expect(duesOf(room.sent)).toEqual(['2026-01-05 09:00']);
    const [first] = room.sent;
    expect((first?.atMs ?? 0) - dueMsOf(first!)).toBeLessThanOrEqual(15_000);
    expect(first?.letter).toMatchObject({ toPersonId: ownerId, place: { kind: 'direct' }, attempts: 0 });
    expect(first?.letter.mark?.command).toBe('remind done');
    expect(room.clock.longestMs).toBeLessThanOrEqual(15_000);
  });

  it('tells the last reading in the units its owner chose, and leaves the words of the reminder', async () => {
    const room = openRoom();
    const tank = room.keep.addTank(profile('Reef', 240));
    const atMs = room.clock.nowMs() - dayMs;
    room.keep.addEntry(tank.id, { atMs, values: [{ parameter: 'temperature', value: 25 }] });
    room.keep.setUnits({ volume: 'US gal', temperature: '°F' });
    room.remind({ tankId: tank.id, parameters: ['temperature'], text: 'check heater, 20 L change' });
    room.begin();
    await room.clock.pass(2 * hourMs);
    const { headline = '', facts = [] } = room.sent[0]?.letter.answer ?? {};
    expect(headline).toMatch(/check heater, 20 L change\.$/);
    // 25 °C is 77 °F (NIST SP 811, 2008, appendix B.9).
    expect(facts.find(({ label }) => label === 'Last temperature')?.value).toMatch(/^77 °F/);
  });

  it('goes on at once while there is more than a batch', async () => {
    const room = openRoom();
    for (let person = 0; person < 250; person++) {
      const keep = room.store.keepFor(String(1_100_000_000_000_001_000n + BigInt(person)));
      const { text, parameters, anchor, zone, rule, place } = room.remind({ text: `task ${person}` });
      room.keep.removeReminder(room.keep.reminders()[0]?.id ?? 0);
      keep.addReminder({ text, parameters, anchor, zone, rule, place }, { nextMs: room.clock.nowMs() });
    }
    room.begin();
    await room.clock.pass(0);
    expect(new Set(room.sent.map(({ letter }) => letter.toPersonId)).size).toBe(250);
    expect(room.sent).toHaveLength(250);
  });

  it('ends after so many times', async () => {
    const room = openRoom();
    room.remind({ times: 3 });
    room.begin();
    await room.clock.doze(10 * dayMs);
    expect(duesOf(room.sent)).toEqual(['2026-01-05 09:00', '2026-01-06 09:00', '2026-01-07 09:00']);
  });

  it('sends what follows "after I last did it" once until it is done', async () => {
    const room = openRoom();
    const { id } = room.remind({ rule: { every: 'after', days: 7 } });
    room.begin();
    await room.clock.doze(30 * dayMs);
    expect(duesOf(room.sent)).toEqual(['2026-01-05 09:00']);
    const doneMs = room.clock.nowMs();
    room.keep.moveReminder(id, '2026-02-11 09:00', { nextMs: doneMs + 7 * dayMs, lastDoneMs: doneMs });
    await room.clock.doze(30 * dayMs);
    expect(room.sent).toHaveLength(2);
  });

  it('sends what was put off once more, and keeps to the plan', async () => {
    const room = openRoom();
    const { id, anchor, nextMs } = room.remind();
    room.begin();
    await room.clock.pass(2 * hourMs);
    const againMs = room.clock.nowMs() + hourMs;
    room.keep.moveReminder(id, anchor, { nextMs: (nextMs ?? 0) + dayMs, againMs });
    await room.clock.doze(dayMs);
    expect(duesOf(room.sent)).toEqual(['2026-01-05 09:00', '2026-01-05 11:00', '2026-01-06 09:00']);
  });
});

describe('a clock that is not as it should be', () => {
  it('sends one late message each after three days of downtime, then keeps to the plan', async () => {
    const room = openRoom();
    const daily = room.remind();
    const often = room.remind({ rule: { every: 'hours', count: 6 } });
    const first = room.begin();
    await room.clock.pass(2 * hourMs);
    await first.stop();
    room.sent.length = 0;
    await room.clock.doze(3 * dayMs);
    expect(room.sent).toEqual([]);
    room.begin();
    await room.clock.pass(minuteMs);
    const ids = room.sent.map(({ letter }) => letter.nonce.split('-')[0]);
    expect(ids.sort()).toEqual([`r${daily.id}`, `r${often.id}`]);
    room.sent.length = 0;
    await room.clock.doze(dayMs);
    expect(room.sent.filter(({ letter }) => letter.nonce.startsWith(`r${daily.id}-`))).toHaveLength(1);
    expect(room.sent.filter(({ letter }) => letter.nonce.startsWith(`r${often.id}-`))).toHaveLength(4);
  });

  it('sends nothing twice when it is set back an hour', async () => {
    const room = openRoom();
    room.remind();
    room.remind({ rule: { every: 'hours', count: 1 } });
    room.begin();
    await room.clock.pass(65 * minuteMs);
    room.clock.set(-hourMs);
    await room.clock.doze(dayMs + 2 * hourMs);
    const nonces = room.sent.map(({ letter }) => letter.nonce);
    expect(new Set(nonces).size).toBe(nonces.length);
    expect(room.sent.filter(({ letter }) => letter.nonce.startsWith('r1-'))).toHaveLength(2);
  });

  it('sends nothing twice when it is set back while a message is on its way', async () => {
    const room = openRoom();
    room.remind();
    room.answering = () => {
      room.clock.set(-hourMs);
      room.answering = () => sentOk;
      return sentOk;
    };
    room.begin();
    await room.clock.pass(3 * hourMs);
    expect(duesOf(room.sent)).toEqual(['2026-01-05 09:00']);
  });
});

describe('a loop that ends', () => {
  it('in the middle of sending leaves it to the next, which knows of the attempt', async () => {
    const room = openRoom();
    room.remind();
    room.answering = () => new Promise(() => undefined);
    room.begin();
    await room.clock.pass(hourMs + minuteMs);
    expect(room.sent.map(({ letter }) => letter.attempts)).toEqual([0]);
    room.answering = () => sentOk;
    room.begin();
    await room.clock.pass(minuteMs / 2);
    expect(room.sent).toHaveLength(1);
    await room.clock.doze(dayMs / 2);
    expect(room.sent.map(({ letter }) => letter.attempts)).toEqual([0, 1]);
    expect(new Set(duesOf(room.sent))).toEqual(new Set(['2026-01-05 09:00']));
  });

  it('finishes what is under way and gives back the rest', async () => {
    const room = openRoom();
    for (let i = 0; i < 30; i++) room.remind({ text: `task ${i}`, rule: { every: 'once' } });
    const finish: (() => void)[] = [];
    room.answering = () => new Promise((resolve) => finish.push(() => resolve(sentOk)));
    const loop = room.begin();
    await room.clock.pass(hourMs + minuteMs);
    const begun = finish.length;
    expect(begun).toBeLessThan(30);
    const stopped = loop.stop();
    for (const each of finish) each();
    await stopped;
    room.answering = () => sentOk;
    room.begin();
    await room.clock.pass(minuteMs / 2);
    expect(room.sent).toHaveLength(30);
    expect(new Set(room.sent.map(({ letter }) => letter.nonce)).size).toBe(30);
    await room.clock.doze(dayMs);
    expect(room.sent).toHaveLength(30);
  });

  it('does not wait longer than 5 s for what hangs', async () => {
    const room = openRoom();
    room.remind();
    room.answering = (_letter, hurry) =>
      new Promise((resolve) => hurry.addEventListener('abort', () => resolve(later)));
    const loop = room.begin();
    await room.clock.pass(hourMs + minuteMs);
    let isStopped = false;
    void loop.stop().then(() => (isStopped = true));
    await room.clock.pass(4000);
    expect(isStopped).toBe(false);
    await room.clock.pass(1000);
    await settle();
    expect(isStopped).toBe(true);
  });
});

describe('failures of ours', () => {
  it('are logged by ids only, and the loop goes on', async () => {
    const broken = '1100000000000000029';
    const room = openRoom('2026-01-05 08:00', (store) => (personId) => {
      if (personId === broken) throw new Error('no such text: change filter floss');
      return store.keepFor(personId);
    });
    const { nextMs, id: _, ...plan } = room.remind();
    room.store.keepFor(broken).addReminder(plan, { nextMs });
    room.begin();
    await room.clock.pass(2 * hourMs);
    expect(room.sent).toHaveLength(1);
    expect(room.log.join('')).toMatch(/"errorId":"[0-9a-f]{8}","reminder":2/);
    expect(room.log.join('')).not.toContain('floss');
  });

  it('send nothing that was changed, done or removed since it was claimed', async () => {
    const room = openRoom();
    for (let i = 0; i < 30; i++) room.remind({ text: `task ${i}`, rule: { every: 'once' } });
    const finish: (() => void)[] = [];
    room.answering = () => new Promise((resolve) => finish.push(() => resolve(sentOk)));
    room.begin();
    await room.clock.pass(hourMs + minuteMs);
    const begun = finish.length;
    for (const { id } of room.keep.reminders()) room.keep.removeReminder(id);
    for (const each of finish) each();
    await room.clock.pass(hourMs);
    expect(room.sent).toHaveLength(begun);
    expect(localOf(room.clock.nowMs())).toBe('2026-01-05 10:01');
  });
});
