import { describe, expect, it } from 'vitest';
import { openTalks } from '../../bot/talks.ts';

const MINUTE_MS = 60_000;

function talksAt() {
  let nowMs = 0;
  const { talkOf } = openTalks(() => nowMs);
  return { talkOf, pass: (ms: number) => (nowMs += ms) };
}

describe('a talk', () => {
  it('is kept for a quarter of an hour, and each question keeps it for another', () => {
    const { talkOf, pass } = talksAt();
    talkOf('a', ['chat']).remember('one');
    pass(15 * MINUTE_MS);
    expect(talkOf('a', ['chat']).before).toBe('one');
    talkOf('a', ['chat']).remember('two');
    pass(15 * MINUTE_MS);
    expect(talkOf('a', ['chat']).before).toBe('two');
    pass(1);
    expect(talkOf('a', ['chat']).before).toBeUndefined();
  });

  it('belongs to one member in one place', () => {
    const { talkOf } = talksAt();
    talkOf('a', ['chat']).remember('one');
    expect(talkOf('b', ['chat']).before).toBeUndefined();
    expect(talkOf('a', ['other']).before).toBeUndefined();
  });

  it('is found again by the message of its answer before the latest of the channel', () => {
    const { talkOf } = talksAt();
    const first = talkOf('a', ['chat']);
    first.remember('one');
    first.alsoAt('message 1');
    talkOf('a', ['chat']).remember('two');
    expect(talkOf('a', ['message 1', 'chat']).before).toBe('one');
    expect(talkOf('b', ['message 1', 'chat']).before).toBeUndefined();
  });

  it('forgets the oldest beyond 5,000', () => {
    const { talkOf } = talksAt();
    for (let i = 0; i <= 5000; i++) talkOf(`p${i}`, ['chat']).remember('x');
    expect(talkOf('p0', ['chat']).before).toBeUndefined();
    expect(talkOf('p1', ['chat']).before).toBe('x');
  });
});
