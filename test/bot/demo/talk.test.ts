import { lazyReader } from '../../../bot/reader/load.ts';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PassThrough, Readable } from 'node:stream';
import { expect, it } from 'vitest';
import { club, fillTank } from '../../../bot/demo/club.ts';
import { talk } from '../../../bot/demo/talk.ts';
import { toPng } from '../../../bot/png.ts';
import { openStore } from '../../../bot/store/open.ts';
import { LOCAL_PERSON } from '../../../bot/store/people.ts';
import { openRoom } from '../../../bot/terminal/room.ts';
import { ask } from '../../ask.ts';
import { commands } from '../../../commands/index.ts';

const NOW_MS = Date.UTC(2026, 5, 1, 18);

it('the demo fills a club with a year of readings and every line of its talk is answered', async () => {
  const dataDir = mkdtempSync(join(tmpdir(), 'sumpside-talk-'));
  const store = openStore({ file: ':memory:', nowMs: () => NOW_MS });
  for (const tank of club) fillTank(store.keepFor(tank.personId), tank, NOW_MS);
  const keep = store.keepFor(LOCAL_PERSON);
  const year = keep.readings(keep.tankInUse()?.id ?? 0, {});
  expect((NOW_MS - (year[0]?.atMs ?? NOW_MS)) / 86_400_000).toBeGreaterThan(360);
  const reported: unknown[] = [];
  const output = new PassThrough();
  let shown = '';
  output.on('data', (chunk) => (shown += String(chunk)));
  const input = Readable.from(talk.map((line) => `${line}\n`));
  const reportFailure = (error: unknown): string => String(reported.push(error));
  await openRoom({
    input,
    output,
    commands,
    ask,
    reader: lazyReader,
    nowMs: () => NOW_MS,
    zone: 'UTC',
    keep,
    dataDir,
    toPng,
    reportFailure,
  });
  store.close();
  rmSync(dataDir, { recursive: true, force: true });
  expect(reported).toEqual([]);
  expect(shown.split('\n').filter((line) => line.startsWith('> '))).toHaveLength(talk.length);
  expect(shown).not.toMatch(/^ {2}Where {2}/m);
  expect(shown).toMatch(/Picture: \S+\.png/);
});
