import { describe, expect, it } from 'vitest';
import { openStore } from '../../bot/store/open.ts';
import { openTalks } from '../../bot/talks.ts';
import { noCase, withMoment, type Case } from '../../core/language/case.ts';

const HOUR_MS = 3_600_000;

function talksAt() {
  let nowMs = 0;
  return { ...openTalks(() => nowMs), pass: (ms: number) => (nowMs += ms) };
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

  it('is found under what asked for an answer, and it is known who asked there', () => {
    const { talkOf, askerOf } = talksAt();
    const first = talkOf('a', ['chat']);
    first.remember(told('one'));
    first.askedAt('call 1');
    talkOf('a', ['chat']).remember(told('two'));
    expect(talkOf('a', ['call 1'], { at: 'chat' }).before?.last).toBe('one');
    expect([askerOf('call 1'), askerOf('call 2')]).toEqual(['a', undefined]);
  });

  it('goes on at another place than those it is looked for', () => {
    const { talkOf } = talksAt();
    talkOf('a', ['call 1'], { at: 'chat' }).remember(told('one'));
    expect(talkOf('a', ['call 1']).before).toBeUndefined();
    expect(talkOf('a', ['chat']).before?.last).toBe('one');
  });

  it('leaves no copy of a text that was acted on', () => {
    const { talkOf } = talksAt();
    const first = talkOf('a', ['chat']);
    first.remember(told('log alk 8'));
    first.askedAt('call 1');
    talkOf('b', ['chat']).remember(told('log alk 8'));
    talkOf('a', ['call 1'], { at: 'chat' }).remember(told(''));
    expect(talkOf('a', ['call 1']).before).toBeUndefined();
    expect(talkOf('a', ['chat']).before?.last).toBe('');
    expect(talkOf('b', ['chat']).before?.last).toBe('log alk 8');
  });

  it('is forgotten where its member wishes so', () => {
    const { talkOf, forgetTalks } = talksAt();
    for (const person of ['1', '12']) talkOf(person, ['chat']).remember(told('one'));
    forgetTalks('1');
    expect(['1', '12'].map((person) => talkOf(person, ['chat']).before?.last)).toEqual([undefined, 'one']);
  });

  it('is in the store where it lasts, and there alone', () => {
    const store = openStore({ file: ':memory:', nowMs: () => 0 });
    const [ada, thread] = ['100000000000000001', 'said in 1'];
    const lasts = (talks = openTalks(() => 0, store.lastingCases)) =>
      talks.talkOf(ada, [thread], { lasts: true });
    const talk = lasts();
    talk.remember(told('one'));
    talk.askedAt('call 1');
    expect(lasts().before?.last).toBe('one');
    expect(openTalks(() => 0, store.lastingCases).talkOf(ada, ['call 1'], { lasts: true }).before?.last).toBe(
      'one',
    );
    expect(openTalks(() => 0, store.lastingCases).talkOf(ada, [thread]).before).toBeUndefined();
    lasts().remember(undefined);
    expect(store.keepFor(ada).told()).toEqual([]);
    store.close();
  });

  it('forgets the oldest beyond 5,000', () => {
    const { talkOf } = talksAt();
    for (let i = 0; i <= 5000; i++) talkOf(`p${i}`, ['chat']).remember(told('x'));
    expect(talkOf('p0', ['chat']).before).toBeUndefined();
    expect(talkOf('p1', ['chat']).before?.last).toBe('x');
  });
});
