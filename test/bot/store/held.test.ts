import { describe, expect, it } from 'vitest';
import { MOST_HELD, type Held } from '../../../bot/store/held.ts';
import { ADA, BEA, DAY_MS, handClock, newFile, opened, raw } from './place.ts';

function made(id: string, more: Partial<Held> = {}): Held {
  return {
    id,
    personId: ADA,
    isPrivate: false,
    kind: 'answer',
    body: JSON.stringify({ words: id }),
    ...more,
  };
}

const idsOf = (exported: unknown): readonly string[] =>
  (exported as { readonly held: readonly { readonly id: string }[] }).held.map(({ id }) => id);

describe('what is held', () => {
  it('is found again as it was, after a restart too, and by its kind alone', () => {
    const file = newFile();
    const first = opened(file);
    first.held.hold(made('one'));
    first.held.hold(made('two', { kind: 'call', isPrivate: true }));
    first.close();
    const { held } = opened(file);
    expect(held.find('one', 'answer', BEA)).toMatchObject(made('one'));
    expect(held.find('two', 'call', ADA)).toMatchObject(made('two', { kind: 'call', isPrivate: true }));
    expect(held.find('one', 'call', ADA)).toBeUndefined();
    expect(held.find('three', 'answer', ADA)).toBeUndefined();
  });

  it('opens for nobody else where it is private', () => {
    const { held } = opened();
    held.hold(made('one', { isPrivate: true }));
    expect(held.find('one', 'answer', BEA)).toBeUndefined();
    expect(held.find('one', 'answer', ADA)?.id).toBe('one');
  });

  it('is never replaced by another of the same id', () => {
    const { held } = opened();
    held.hold(made('one'));
    expect(() => held.hold(made('one', { personId: BEA }))).toThrow('UNIQUE constraint failed: held.id');
    expect(held.find('one', 'answer', BEA)?.personId).toBe(ADA);
  });

  it('takes no person but a Discord id or the room, and nothing but JSON', () => {
    const { held } = opened();
    expect(() => held.hold(made('one', { personId: 'someone' }))).toThrow('a person is a Discord id');
    expect(() => held.hold(made('one', { body: 'words' }))).toThrow('CHECK constraint failed');
    expect(held.find('one', 'answer', ADA)).toBeUndefined();
  });

  it('is there for thirty days, and then removed by the upkeep', async () => {
    const clock = handClock();
    const file = newFile();
    const store = opened(file, clock.read);
    store.held.hold(made('one'));
    clock.nowMs += DAY_MS;
    store.held.hold(made('two'));
    clock.nowMs += 29 * DAY_MS;
    await store.upkeep(clock.nowMs);
    expect(store.held.find('one', 'answer', ADA)?.id).toBe('one');
    clock.nowMs += 1;
    expect(store.held.find('one', 'answer', ADA)).toBeUndefined();
    expect(idsOf(store.keepFor(ADA).exportAll())).toEqual(['two']);
    await store.upkeep(clock.nowMs);
    store.close();
    expect(raw(file, (db) => db.prepare('SELECT id FROM held').pluck().all())).toEqual(['two']);
  });

  it('is the latest of each person, so many', () => {
    const { held } = opened();
    held.hold(made('of another', { personId: BEA }));
    for (let i = 0; i <= MOST_HELD; i++) held.hold(made(`n${i}`));
    expect(held.find('n0', 'answer', ADA)).toBeUndefined();
    expect(held.find('n1', 'answer', ADA)?.id).toBe('n1');
    expect(held.find(`n${MOST_HELD}`, 'answer', ADA)?.id).toBe(`n${MOST_HELD}`);
    expect(held.find('of another', 'answer', ADA)?.id).toBe('of another');
  });

  it('is in the export of its person, and erased with all else, also where nothing else is kept', () => {
    const { held, keepFor, personCount } = opened();
    held.hold(made('one', { isPrivate: true }));
    held.hold(made('two', { personId: BEA }));
    expect(personCount()).toBe(0);
    expect(keepFor(ADA).exportAll()).toMatchObject({
      held: [
        {
          id: 'one',
          kind: 'answer',
          isPrivate: true,
          heldSince: '2026-03-14T09:30:00.000Z',
          body: { words: 'one' },
        },
      ],
    });
    keepFor(ADA).eraseAll();
    expect(held.find('one', 'answer', ADA)).toBeUndefined();
    expect(idsOf(keepFor(ADA).exportAll())).toEqual([]);
    expect(idsOf(keepFor(BEA).exportAll())).toEqual(['two']);
  });
});
