import { expect, it } from 'vitest';
import { MOST_NOTICES } from '../../../bot/store/notices.ts';
import { ADA, BEA, newFile, NOW_MS, opened, planned } from './place.ts';

function stop(store: ReturnType<typeof opened>, id: string, notice: string): void {
  const made = store.keepFor(id).addReminder(planned('x'), { nextMs: NOW_MS });
  store.due.stop(made.id, NOW_MS, {}, notice);
}

it('waits for the member over a restart, oldest first, and is exported until it was seen', () => {
  const file = newFile();
  const store = opened(file);
  for (const text of ['one', 'two']) stop(store, ADA, text);
  stop(store, BEA, 'three');
  store.close();
  const keep = opened(file).keepFor(ADA);
  const madeAt = '2026-03-14T09:30:00.000Z';
  expect(keep.exportAll()).toMatchObject({
    notices: [
      { text: 'one', madeAt },
      { text: 'two', madeAt },
    ],
  });
  expect([keep.takeNotices(), keep.takeNotices()]).toEqual([['one', 'two'], []]);
  expect(keep.exportAll()).toMatchObject({ notices: [] });
});

it('is said once however often it comes, and the oldest make room', () => {
  const store = opened();
  for (let i = 0; i < MOST_NOTICES + 5; i++) stop(store, ADA, `notice ${Math.min(i, MOST_NOTICES)}`);
  expect(store.keepFor(ADA).takeNotices()).toEqual(
    Array.from({ length: MOST_NOTICES }, (_, i) => `notice ${i + 1}`),
  );
  stop(store, ADA, 'again');
  expect(store.keepFor(ADA).takeNotices()).toEqual(['again']);
});

it('goes with the member', () => {
  const store = opened();
  stop(store, ADA, 'mine');
  store.keepFor(ADA).eraseAll();
  expect(store.keepFor(ADA).takeNotices()).toEqual([]);
});

it('costs those who have none no query', () => {
  const store = opened();
  stop(store, ADA, 'mine');
  const [ada, bea] = [store.keepFor(ADA), store.keepFor(BEA)];
  store.close();
  expect(bea.takeNotices()).toEqual([]);
  expect(() => ada.takeNotices(), 'a query of a closed file').toThrow('not open');
});
