import { describe, expect, it } from 'vitest';
import { MOST_TOLD } from '../../../commands/told.ts';
import { noCase, withMoment, type Case } from '../../../core/language/case.ts';
import { ADA, BEA, DAY_MS, handClock, newFile, opened, profile, raw } from './place.ts';

const THREAD = 'said in 100000000000000900';

function told(text: string, volume = '75 gal'): Case {
  return withMoment(noCase, { atMs: 0, kind: 'readings-ok', slots: { volume } }, text, {
    refused: ['moved'],
  });
}

describe('what was told in a thread', () => {
  it('is found by the same member in the same place, as it was', () => {
    const { lastingCases: cases } = opened();
    cases.put(ADA, THREAD, told('one'));
    expect(cases.find(ADA, THREAD)).toEqual(told('one'));
    expect(cases.find(BEA, THREAD)).toBeUndefined();
    expect(cases.find(ADA, `own ${THREAD}`)).toBeUndefined();
    cases.put(BEA, THREAD, told('two', '20 gal'));
    expect(cases.find(ADA, THREAD)?.last).toBe('one');
  });

  it('is found by what was asked last, and by no earlier one', () => {
    const { lastingCases: cases } = opened();
    cases.put(ADA, THREAD, told('one'));
    cases.asked(ADA, THREAD, 'message 1');
    expect(cases.find(ADA, 'message 1')?.last).toBe('one');
    expect(cases.find(BEA, 'message 1')).toBeUndefined();
    cases.put(ADA, THREAD, told('two'));
    expect(cases.find(ADA, 'message 1')).toBeUndefined();
  });

  it('is there for three days after the last message, and then removed with a member of whom nothing else is kept', async () => {
    const clock = handClock();
    const file = newFile();
    const store = opened(file, clock.read);
    store.lastingCases.put(ADA, THREAD, told('one'));
    store.lastingCases.put(BEA, THREAD, told('two'));
    store.keepFor(BEA).addTank(profile('Pantry'));
    clock.nowMs += 2 * DAY_MS;
    store.lastingCases.put(BEA, THREAD, told('three'));
    clock.nowMs += DAY_MS;
    await store.upkeep(clock.nowMs);
    expect(store.lastingCases.find(ADA, THREAD)?.last).toBe('one');
    clock.nowMs += 1;
    expect(store.lastingCases.find(ADA, THREAD)).toBeUndefined();
    expect(store.keepFor(ADA).told()).toEqual([]);
    await store.upkeep(clock.nowMs);
    expect(store.personCount()).toBe(1);
    clock.nowMs += 2 * DAY_MS;
    await store.upkeep(clock.nowMs);
    expect(store.keepFor(BEA).tanks()).toHaveLength(1);
    store.close();
    expect(raw(file, (db) => db.prepare('SELECT count(*) FROM told').pluck().get())).toBe(0);
  });

  it('is dropped where it no longer fits', () => {
    const file = newFile();
    const first = opened(file);
    first.lastingCases.put(ADA, THREAD, told('one'));
    first.lastingCases.put(ADA, 'said in 2', told('two'));
    first.close();
    raw(file, (db) =>
      db
        .prepare("UPDATE told SET told = json_set(told, '$.moments[0].kind', 'gone') WHERE place = ?")
        .run(THREAD),
    );
    const store = opened(file);
    expect(store.lastingCases.find(ADA, THREAD)).toBeUndefined();
    expect(
      store
        .keepFor(ADA)
        .told()
        .map(({ told: { last } }) => last),
    ).toEqual(['two']);
    store.close();
    expect(raw(file, (db) => db.prepare('SELECT place FROM told').pluck().all())).toEqual(['said in 2']);
  });

  it('is kept of so many places, the latest', () => {
    const clock = handClock();
    const { lastingCases: cases, keepFor } = opened(':memory:', clock.read);
    for (let i = 0; i <= MOST_TOLD; i++) {
      clock.nowMs += 1;
      cases.put(ADA, `said in ${i}`, told(`${i}`));
    }
    expect(keepFor(ADA).told()).toHaveLength(MOST_TOLD);
    expect(cases.find(ADA, 'said in 0')).toBeUndefined();
    expect(cases.find(ADA, 'said in 1')?.last).toBe('1');
  });

  it('is in the export of its member, with the text of the last message, and erased with all else', () => {
    const { lastingCases: cases, keepFor, personCount } = opened();
    cases.put(ADA, THREAD, told('my words'));
    cases.put(BEA, THREAD, told('others'));
    const text = JSON.stringify(keepFor(ADA).exportAll());
    expect(text).toContain('"last":"my words"');
    expect(text).toContain('"lastAt":"2026-03-14T09:30:00.000Z"');
    expect(text).not.toContain('others');
    keepFor(ADA).eraseAll();
    expect(cases.find(ADA, THREAD)).toBeUndefined();
    expect(cases.find(BEA, THREAD)?.last).toBe('others');
    expect(personCount()).toBe(1);
  });
});
