import { describe, expect, it } from 'vitest';
import type { Keep } from '../../commands/keep.ts';
import { keepReads, watchedKeep } from '../../commands/watched-keep.ts';
import { keepMarked, NOW_MS } from './marked.ts';
import { wholeStore } from './whole-store.ts';

function kept() {
  const store = wholeStore(() => NOW_MS);
  const keep = store.keepFor('100000000000000001');
  keepMarked(keep, NOW_MS);
  return { keep, rows: store.rows };
}

/** What fits most of the functions: an id, then something to look for or to put down. */
const GIVEN = [1, { most: 3 }, {}];
const names = Object.keys(kept().keep) as (keyof Keep)[];
const reads: ReadonlySet<string> = new Set(keepReads);
const callAny = (keep: Keep, name: keyof Keep): unknown =>
  Reflect.apply(keep[name] as (...given: unknown[]) => unknown, undefined, GIVEN);

describe('what only looks', () => {
  it.each(keepReads)('%s leaves every row as it was, and is not told of', (name) => {
    const { keep, rows } = kept();
    const before = rows();
    const watched = watchedKeep(keep, () => {
      throw new Error('told');
    });
    expect(callAny(watched, name)).toEqual(callAny(keep, name));
    expect(rows()).toBe(before);
    expect(before).toContain('Quorvath');
  });
});

describe('all else', () => {
  const writes = names.filter((name) => !reads.has(name));

  it('is the rest of what there is', () => {
    expect(writes).toContain('addReminder');
    expect(writes).toContain('takeNotices');
    expect(writes.length + keepReads.length).toBe(names.length);
  });

  it.each(writes)('%s is told of before it is done, and can be kept from being done', (name) => {
    const { keep, rows } = kept();
    const before = rows();
    const watched = watchedKeep(keep, () => {
      throw new Error('told');
    });
    expect(() => callAny(watched, name)).toThrow('told');
    expect(rows()).toBe(before);
  });

  it('is done where nothing keeps it from it', () => {
    const { keep, rows } = kept();
    let told = 0;
    const watched = watchedKeep(keep, () => (told += 1));
    expect(watched.removeTank(1)).toBe(true);
    expect(told).toBe(1);
    expect(rows()).not.toContain('Quorvath');
  });
});
