import { expect, it } from 'vitest';
import { openTurns } from '../../bot/turns.ts';

it('gives twelve answers at once, then one every five seconds, and tells to wait once', () => {
  let nowMs = 0;
  const turnOf = openTurns(() => nowMs);
  expect(Array.from({ length: 14 }, () => turnOf('a'))).toEqual([
    ...Array.from({ length: 12 }, () => 'now'),
    'tell to wait',
    'wait',
  ]);
  expect(turnOf('b')).toBe('now');
  nowMs += 4999;
  expect(turnOf('a')).toBe('wait');
  nowMs += 1;
  expect(turnOf('a')).toBe('now');
  expect(turnOf('a')).toBe('tell to wait');
  nowMs += 3_600_000;
  expect(Array.from({ length: 13 }, () => turnOf('a')).filter((turn) => turn === 'now')).toHaveLength(12);
});
