import { lazyReader } from '../../../bot/reader/load.ts';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PassThrough, Readable } from 'node:stream';
import { afterEach, expect } from 'vitest';
import { toPng } from '../../../bot/png.ts';
import { openStore } from '../../../bot/store/open.ts';
import { LOCAL_PERSON } from '../../../bot/store/people.ts';
import { openRoom } from '../../../bot/terminal/room.ts';
import { ask } from '../../ask.ts';
import { commands } from '../../../commands/index.ts';

const WIDE = 10_000;
const DAY_MS = 86_400_000;
const START_MS = Date.UTC(2026, 5, 1, 18);
const folders: string[] = [];
afterEach(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true });
});

export interface Room {
  readonly dataDir: string;
  /** Types lines into the room, `daysLater` days after `fromMs` (1 June 2026), and returns what it shows, unwrapped. */
  readonly type: Typing;
  /** The same as it is shown on an endlessly wide page, a part of the answer on each line. */
  readonly typeWide: Typing;
}

type Typing = (lines: readonly string[], daysLater?: number, fromMs?: number) => Promise<string>;

/** The terminal room over a store in a folder of its own; it is opened anew for every call, as after a restart. */
export function room(): Room {
  const dataDir = mkdtempSync(join(tmpdir(), 'sumpside-room-'));
  folders.push(dataDir);
  const typeWide: Typing = async (lines, daysLater = 0, fromMs = START_MS) => {
    const nowMs = (): number => fromMs + daysLater * DAY_MS;
    const store = openStore({ file: join(dataDir, 'room.sqlite'), nowMs });
    const reported: unknown[] = [];
    const output = Object.assign(new PassThrough(), { columns: WIDE });
    let shown = '';
    output.on('data', (chunk) => (shown += String(chunk)));
    await openRoom({
      input: Readable.from(lines.map((line) => `${line}\n`)),
      output,
      commands,
      ask,
      reader: lazyReader,
      nowMs,
      zone: 'UTC',
      keep: store.keepFor(LOCAL_PERSON),
      dataDir,
      toPng,
      reportFailure: (error) => String(reported.push(error)),
    });
    store.close();
    expect(reported).toEqual([]);
    return shown;
  };
  const type: Typing = async (...typed) => (await typeWide(...typed)).replace(/\s+/g, ' ');
  return { dataDir, type, typeWide };
}
