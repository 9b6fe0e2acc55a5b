import { describe, expect, it } from 'vitest';
import type { Posted } from '../../../bot/clock/post.ts';
import { dayMs, duesOf, hourMs, openRoom, ownerId, sitterId, tankOf, type Room } from './room.ts';

const gone: Posted = { kind: 'gone', why: 'it is closed' };
const sentOk: Posted = { kind: 'sent' };

const names = { [ownerId]: 'owner', [sitterId]: 'sitter' } as const;

/** Who was told what, by the nonces of the letters. */
function told(room: Room): readonly string[] {
  return room.sent
    .filter(({ letter }) => letter.nonce.startsWith('h'))
    .map(({ letter }) => `${letter.nonce.split('-')[1]} ${names[letter.toPersonId as typeof ownerId]}`);
}

/** To whom what was due went. */
function toWhom(room: Room): readonly string[] {
  const due = room.sent.filter(({ letter }) => letter.nonce.startsWith('r'));
  return duesOf(due).map(
    (local, index) => `${local} ${names[due[index]?.letter.toPersonId as typeof ownerId]}`,
  );
}

/** Asks the sitter for two days from tomorrow at 08:00. */
function handOver(room: Room): number {
  const fromMs = room.clock.nowMs() + dayMs;
  return room.keep.addHandOver({ sitterId, fromMs, untilMs: fromMs + 2 * dayMs }).id;
}

describe('a hand-over', () => {
  it('gives the sitter what is due in its span, and its owner what comes after', async () => {
    const room = openRoom();
    room.remind({ tankId: tankOf(room), parameters: ['alkalinity'], text: 'test alkalinity' });
    const id = handOver(room);
    room.begin();
    await room.clock.pass(hourMs / 2);
    expect(told(room)).toEqual(['ask sitter']);
    expect(room.sent[0]?.letter.mark?.command).toBe('remind sit');
    room.store.keepFor(sitterId).answerHandOver(id, true);
    await room.clock.doze(4 * dayMs);
    expect(told(room)).toEqual([
      'ask sitter',
      'accepted sitter',
      'accepted owner',
      'ended owner',
      'ended sitter',
    ]);
    expect(toWhom(room)).toEqual([
      '2026-01-05 09:00 owner',
      '2026-01-06 09:00 sitter',
      '2026-01-07 09:00 sitter',
      '2026-01-08 09:00 owner',
    ]);
    const places = room.sent.map(({ letter }) => letter.place.kind);
    expect(new Set(places)).toEqual(new Set(['direct']));
  });

  it('stays with its owner where the sitter declines or does not answer', async () => {
    for (const answers of [true, false]) {
      const room = openRoom();
      room.remind();
      const id = handOver(room);
      room.begin();
      await room.clock.pass(hourMs / 2);
      if (answers) room.store.keepFor(sitterId).answerHandOver(id, false);
      await room.clock.doze(4 * dayMs);
      expect(told(room)).toContain(answers ? 'declined owner' : 'ended owner');
      expect(toWhom(room).every((each) => each.endsWith('owner'))).toBe(true);
    }
  });

  it('is off, with a notice, where the sitter cannot be reached', async () => {
    const room = openRoom();
    handOver(room);
    room.answering = ({ toPersonId }) => (toPersonId === sitterId ? gone : sentOk);
    room.begin();
    await room.clock.pass(hourMs);
    expect(room.keep.handOvers()).toEqual([]);
    const notices = room.keep.takeNotices();
    expect(notices.join(' ')).toContain('I could not reach the sitter you asked: it is closed');
    expect(notices).toHaveLength(1);
  });

  it('gives its owner what a sitter does not take any more, and says why', async () => {
    const room = openRoom();
    room.remind();
    const id = handOver(room);
    room.begin();
    await room.clock.pass(hourMs / 2);
    room.store.keepFor(sitterId).answerHandOver(id, true);
    await room.clock.pass(hourMs);
    room.answering = ({ toPersonId }) => (toPersonId === sitterId ? gone : sentOk);
    await room.clock.doze(dayMs);
    expect(toWhom(room).slice(1)).toEqual(['2026-01-06 09:00 sitter', '2026-01-06 09:00 owner']);
    const why = room.sent.at(-1)?.letter.answer.facts[0]?.value;
    expect(why).toBe('I could not reach your sitter: it is closed');
  });

  it('is told again where it has to wait, and to nobody twice', async () => {
    const room = openRoom();
    const id = handOver(room);
    room.begin();
    await room.clock.pass(hourMs / 2);
    room.store.keepFor(sitterId).answerHandOver(id, true);
    let tries = 0;
    room.answering = ({ toPersonId }) => (toPersonId === ownerId && ++tries < 4 ? { kind: 'later' } : sentOk);
    await room.clock.pass(hourMs);
    expect(told(room).filter((each) => each === 'accepted sitter')).toHaveLength(1);
    expect(told(room).filter((each) => each === 'accepted owner')).toHaveLength(4);
  });
});
