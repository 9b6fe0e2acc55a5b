import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Readable } from 'node:stream';
import { ask } from '../../commands/ask.ts';
import { commands } from '../../commands/index.ts';
import { logFailure, openLog } from '../log.ts';
import { toPng } from '../png.ts';
import { roomFile } from '../store/files.ts';
import { openStore } from '../store/open.ts';
import { openRoom } from '../terminal/room.ts';
import { club, fillTank } from './club.ts';
import { fillCorals } from './corals.ts';
import { lazyReader } from '../reader/load.ts';
import { talk } from './talk.ts';

/** The demo ends at this moment, so that it prints the same on every day. */
const NOW_MS = Date.UTC(2026, 5, 1, 18, 0);

const dataDir = mkdtempSync(join(tmpdir(), 'sumpside-demo-'));
const log = openLog('warn');
const store = openStore({ file: roomFile(dataDir), nowMs: () => NOW_MS, log });
for (const tank of club) fillTank(store.keepFor(tank.personId), tank, NOW_MS);
const keep = store.keepFor('local');
for (const { id } of keep.tanks()) fillCorals(keep, id, NOW_MS);
process.stdout.write(`An invented club of ${club.length} tanks and a year of readings, in ${dataDir}\n\n`);
await openRoom({
  input: Readable.from(talk.map((line) => `${line}\n`)),
  output: process.stdout,
  commands,
  ask,
  reader: lazyReader,
  nowMs: () => NOW_MS,
  zone: 'UTC',
  keep,
  dataDir,
  toPng,
  reportFailure: (error) => logFailure(log, error, 'the demo failed'),
});
store.close();
process.stdout.write(
  `\nThe pictures and files are in ${dataDir}; delete the folder when you have seen them.\n`,
);
