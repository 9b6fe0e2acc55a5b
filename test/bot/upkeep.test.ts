import { existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { openLog } from '../../bot/log.ts';
import { memberFile } from '../../bot/store/files.ts';
import { openStore } from '../../bot/store/open.ts';
import { keepUp } from '../../bot/upkeep.ts';

let folder: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'sumpside-backup-'));
});

afterEach(() => rmSync(folder, { recursive: true, force: true }));

function copies(): readonly string[] {
  const backups = join(folder, 'backups');
  return existsSync(backups)
    ? readdirSync(backups)
        .filter((name) => name.endsWith('.sqlite'))
        .sort()
    : [];
}

describe('the daily backup', () => {
  it('makes one copy a day of the clock it is given, the first at once', async () => {
    let now = Date.UTC(2025, 2, 14, 23);
    const nowMs = (): number => now;
    const store = openStore({ file: memberFile(folder), nowMs });
    const backups = keepUp(store, nowMs, openLog('silent'), 5);
    await vi.waitFor(() => expect(copies()).toEqual(['sumpside-2025-03-14.sqlite']));
    now += 3_600_000;
    await vi.waitFor(() =>
      expect(copies()).toEqual(['sumpside-2025-03-14.sqlite', 'sumpside-2025-03-15.sqlite']),
    );
    backups.stop();
    store.close();
  });

  it('goes on after a failure, with an id in the log', async () => {
    const lines: string[] = [];
    const log = openLog('error', { write: (line) => void lines.push(line) });
    const store = openStore({ file: memberFile(folder), nowMs: () => 0 });
    store.close();
    const backups = keepUp(store, () => 0, log, 5);
    await vi.waitFor(() => expect(lines.length).toBeGreaterThan(1));
    backups.stop();
    expect(lines[0]).toMatch(/"errorId":"[0-9a-f]{8}".*no backup was made/);
  });
});
