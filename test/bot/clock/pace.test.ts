import { describe, expect, it } from 'vitest';
import { createPace } from '../../../bot/clock/pace.ts';
import { FakeClock, settle } from './fake-clock.ts';

/** When turns are taken that are asked for at these times; every timer is late by `lateMs`. */
async function taken(askMs: readonly number[], lateMs = 0): Promise<readonly number[]> {
  const clock = new FakeClock(0);
  const late = {
    nowMs: clock.nowMs,
    after: (ms: number, work: () => void) => clock.after(ms + lateMs, work),
  };
  const turn = createPace(late, 40);
  const times: number[] = [];
  for (const [index, atMs] of askMs.entries()) {
    await clock.pass(atMs - (askMs[index - 1] ?? 0));
    void turn().then(() => times.push(clock.nowMs()));
  }
  await settle();
  await clock.pass(60_000);
  return times;
}

const many = Array.from({ length: 400 }, () => 0);

describe('the pace', () => {
  it.each([0, 3, 30])('takes at most 40 turns in any second, timers late by %i ms', async (lateMs) => {
    const times = await taken(many, lateMs);
    expect(times).toHaveLength(400);
    for (const start of times) {
      expect(times.filter((time) => time >= start && time < start + 1000).length).toBeLessThanOrEqual(40);
    }
  });

  it('makes up for timers that are a little late', async () => {
    expect((await taken(many, 3)).at(-1)).toBeLessThan(10_100);
  });

  it('gives a turn at once after a quiet time, and saves none up', async () => {
    expect(await taken([0, 5000, 5000, 5000])).toEqual([0, 5000, 5020, 5040]);
  });
});
