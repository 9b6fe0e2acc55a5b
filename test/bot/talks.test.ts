import { describe, expect, it } from 'vitest';
import { openTalks } from '../../bot/talks.ts';
import { noCase, withMoment, type Case } from '../../core/language/case.ts';

const HOUR_MS = 3_600_000;

function talksAt() {
  let nowMs = 0;
  const { talkOf } = openTalks(() => nowMs);
  return { talkOf, pass: (ms: number) => (nowMs += ms) };
}

/** A case whose last message is this. */
function told(text: string): Case {
  return withMoment(noCase, { atMs: 0, kind: 'readings-ok', slots: {} }, text);
}

describe('a case', () => {
  it('is kept for two hours, and each message keeps it for another two', () => {
    const { talkOf, pass } = talksAt();
    talkOf('a', ['chat']).remember(told('one'));
    pass(2 * HOUR_MS);
    expect(talkOf('a', ['chat']).before?.last).toBe('one');
    talkOf('a', ['chat']).remember(told('two'));
    pass(2 * HOUR_MS);
    expect(talkOf('a', ['chat']).before?.last).toBe('two');
    pass(1);
    expect(talkOf('a', ['chat']).before).toBeUndefined();
  });

  it('belongs to one member in one place', () => {
    const { talkOf } = talksAt();
    talkOf('a', ['chat']).remember(told('one'));
    expect(talkOf('b', ['chat']).before).toBeUndefined();
    expect(talkOf('a', ['other']).before).toBeUndefined();
  });

  it('is found again by the message of its answer before the latest of the channel', () => {
    const { talkOf } = talksAt();
    const first = talkOf('a', ['chat']);
    first.remember(told('one'));
    first.alsoAt('message 1');
    talkOf('a', ['chat']).remember(told('two'));
    expect(talkOf('a', ['message 1', 'chat']).before?.last).toBe('one');
    expect(talkOf('b', ['message 1', 'chat']).before).toBeUndefined();
  });

  it('forgets the oldest beyond 5,000', () => {
    const { talkOf } = talksAt();
    for (let i = 0; i <= 5000; i++) talkOf(`p${i}`, ['chat']).remember(told('x'));
    expect(talkOf('p0', ['chat']).before).toBeUndefined();
    expect(talkOf('p1', ['chat']).before?.last).toBe('x');
  });
});
