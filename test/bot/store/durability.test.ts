import { once } from 'node:events';
import { setTimeout as wait } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { MemberExport } from '../../../bot/store/export.ts';
import { problemOf } from '../../commands/text.ts';
import { compile, type Child, type Compiled } from './compiled.ts';
import { ADA, newFile, opened, profile, raw } from './place.ts';

const WRITER = 'test/bot/store/writer.ts';
const ENTRIES = 10_000;
const ROUNDS = 6;

let compiled: Compiled;
beforeAll(() => {
  compiled = compile([WRITER]);
}, 60_000);
afterAll(() => compiled.remove());

async function firstWords({ process: child, written }: Child): Promise<void> {
  if (child.stdout === null) throw new Error('no output');
  if (written.out === '') await once(child.stdout, 'data');
}

/** Whole lines only: "id value". A line cut short by the end of the process was not said. */
function acknowledged({ written }: Child): (readonly [id: number, value: number])[] {
  return written.out
    .split('\n')
    .slice(0, -1)
    .map((line) => line.split(' ').map(Number))
    .map(([id, value]) => [id ?? Number.NaN, value ?? Number.NaN]);
}

describe('a bot that is killed while it writes', () => {
  it('has lost nothing that it said was kept, however often', { timeout: 120_000 }, async () => {
    const file = newFile();
    const said = new Map<number, number>();
    for (let round = 0; round < ROUNDS; round++) {
      const child = compiled.start(WRITER, [file, String(round * ENTRIES), String(ENTRIES)]);
      await firstWords(child);
      await wait(Math.random() * 400);
      child.process.kill('SIGKILL');
      expect(await child.exit, child.written.err).toBe(null);
      for (const [id, value] of acknowledged(child)) said.set(id, value);
      const { kept, nextMs } = reopened(file);
      const last = Math.max(...said.values());
      expect([last + 1, last + 2], 'the reminder is as it was said, or one further').toContain(nextMs);
      const lost = [...said].filter(
        ([id, value]) => kept.get(id) !== `entry ${value}: ${value}, ${value + 0.5}`,
      );
      expect(lost).toEqual([]);
      expect(kept.size - said.size, 'kept but not yet said: one a round at most').toBeLessThanOrEqual(
        round + 1,
      );
    }
    expect(said.size).toBeGreaterThan(ROUNDS);
  });
});

/** What the next bot finds, and that the file is whole. */
function reopened(file: string): { kept: Map<number, string>; nextMs: number | undefined } {
  const store = opened(file);
  const nextMs = store.keepFor(ADA).reminders()[0]?.nextMs;
  const { tanks } = store.keepFor(ADA).exportAll() as MemberExport;
  store.close();
  raw(file, (db) => {
    expect(db.pragma('integrity_check', { simple: true })).toBe('ok');
    expect(db.pragma('foreign_key_check')).toEqual([]);
  });
  const entries = tanks.flatMap((tank) => tank.entries);
  const kept = new Map(
    entries.map(({ id, note, values }) => [id, `${note}: ${values.map(({ value }) => value).join(', ')}`]),
  );
  return { kept, nextMs };
}

describe('a second bot', () => {
  const sentence = 'Another bot is already running on this DATA_DIR.';

  it('in another process is refused while the first has the file, even one that only opened it', async () => {
    const file = newFile();
    const store = opened(file);
    const refused = compiled.start(WRITER, [file, '0', '1']);
    expect(await refused.exit).toBe(78);
    expect(refused.written).toEqual({ out: '', err: sentence });
    store.keepFor(ADA).addTank(profile('still works'));
    store.close();
    const next = compiled.start(WRITER, [file, '0', '1']);
    expect(await next.exit, next.written.err).toBe(0);
  });

  it('is refused while a bot in another process writes', async () => {
    const file = newFile();
    const first = compiled.start(WRITER, [file, '0', '1000000']);
    await firstWords(first);
    const startMs = performance.now();
    expect(problemOf(() => opened(file)).message).toBe(sentence);
    expect(performance.now() - startMs).toBeLessThan(5000);
    first.process.kill('SIGKILL');
    await first.exit;
    expect(opened(file).keepFor(ADA).tanks()).toHaveLength(1);
  });
});
