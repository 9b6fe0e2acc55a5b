import { copyFileSync, existsSync, readdirSync, readFileSync, truncateSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { memberFile, roomFile } from '../../../bot/store/files.ts';
import { restore } from '../../../bot/store/restore.ts';
import { problemOf } from '../../commands/text.ts';
import { compile, type Compiled } from './compiled.ts';
import { ADA, alkalinity, newFile, newFolder, NOW_MS, opened, profile, raw } from './place.ts';

/** A data file with one reading, its backup, and a second reading made after that. */
async function backedUp(file = newFile()) {
  const store = opened(file);
  const keep = store.keepFor(ADA);
  const { id } = keep.addTank(profile('Reef'));
  keep.addEntry(id, alkalinity(8, 0, 'before'));
  const backup = await store.backupNow();
  keep.addEntry(id, alkalinity(9, 1, 'after'));
  return { file, store, backup };
}

function notesIn(file: string): (string | undefined)[] {
  const store = opened(file);
  const keep = store.keepFor(ADA);
  const notes = keep.tanks().flatMap(({ id }) => keep.readings(id, {}).map(({ note }) => note));
  store.close();
  return notes;
}

describe('restoring', () => {
  it('brings back the backup and keeps the file it replaces', async () => {
    const { file, store, backup } = await backedUp();
    store.close();
    const before = readFileSync(backup);
    const replaced = restore({ backup, file, nowMs: NOW_MS });
    expect(replaced).toBe(join(dirname(file), 'sumpside-replaced-20260314T093000000Z.sqlite'));
    expect(notesIn(file)).toEqual(['before']);
    expect(readFileSync(backup).equals(before)).toBe(true);
    expect(notesIn(replaced ?? '')).toEqual(['before', 'after']);
    expect(restore({ backup: replaced ?? '', file, nowMs: NOW_MS + 1 })).toBeDefined();
    expect(notesIn(file)).toEqual(['before', 'after']);
  });

  it('works where there is no data file', async () => {
    const { store, backup } = await backedUp();
    store.close();
    const file = join(newFolder(), 'new', 'sumpside.sqlite');
    expect(restore({ backup, file, nowMs: NOW_MS })).toBeUndefined();
    expect(notesIn(file)).toEqual(['before']);
    expect(readdirSync(dirname(file))).toEqual(['sumpside.sqlite']);
  });

  it('puts a damaged data file aside', async () => {
    const { file, store, backup } = await backedUp();
    store.close();
    writeFileSync(file, 'noise '.repeat(1000));
    const replaced = restore({ backup, file, nowMs: NOW_MS });
    expect(readFileSync(replaced ?? '', 'utf8')).toMatch(/^noise/);
    expect(notesIn(file)).toEqual(['before']);
  });

  it('goes back from a file of a newer bot', async () => {
    const { file, store, backup } = await backedUp();
    store.close();
    raw(file, (db) => db.pragma('user_version = 999'));
    restore({ backup, file, nowMs: NOW_MS });
    expect(notesIn(file)).toEqual(['before']);
  });

  it('takes over what a killed bot left in the write-ahead log', async () => {
    const { file, store, backup } = await backedUp();
    const crashed = newFile();
    for (const end of ['', '-wal']) copyFileSync(file + end, crashed + end);
    store.close();
    const replaced = restore({ backup, file: crashed, nowMs: NOW_MS });
    expect(existsSync(`${crashed}-wal`)).toBe(false);
    expect(notesIn(crashed)).toEqual(['before']);
    expect(notesIn(replaced ?? '')).toEqual(['before', 'after']);
  });
});

describe('a restore that is refused changes nothing', () => {
  it('while the bot runs', async () => {
    const { file, store, backup } = await backedUp();
    expect(problemOf(() => restore({ backup, file, nowMs: NOW_MS })).message).toContain('already running');
    store.close();
    expect(notesIn(file)).toEqual(['before', 'after']);
  });

  it.each<[string, (path: string) => void, string]>([
    ['there is none', () => {}, 'There is no such backup file.'],
    ['it is empty', (path) => writeFileSync(path, ''), 'The backup is empty.'],
    ['it is something else', (path) => writeFileSync(path, 'x'.repeat(9000)), 'damaged or was not made'],
    ['it is cut short', (path) => truncateSync(path, 3 * 4096), 'damaged'],
    ['it is too new', (path) => raw(path, (db) => db.pragma('user_version = 999')), 'made by a newer bot'],
    [
      "it is another program's",
      (path) => raw(path, (db) => db.pragma('application_id = 7')),
      'not made by this bot',
    ],
    [
      'a table lost its rows',
      (path) => raw(path, (db) => db.exec('PRAGMA foreign_keys = OFF; DELETE FROM tank')),
      'damaged',
    ],
  ])('when %s', async (what, spoil, sentence) => {
    const { file, store, backup } = await backedUp();
    store.close();
    const spoilt = join(newFolder(), 'spoilt.sqlite');
    if (what !== 'there is none') copyFileSync(backup, spoilt);
    spoil(spoilt);
    const problem = problemOf(() => restore({ backup: spoilt, file, nowMs: NOW_MS }));
    expect(problem).toMatchObject({ field: 'BACKUP_FILE', given: spoilt });
    expect(problem.message).toContain(sentence);
    expect(readdirSync(dirname(file)).sort()).toEqual(['backups', 'sumpside.sqlite']);
    expect(notesIn(file)).toEqual(['before', 'after']);
  });

  it('when the backup is the data file itself', async () => {
    const { file, store } = await backedUp();
    store.close();
    expect(problemOf(() => restore({ backup: file, file, nowMs: NOW_MS })).message).toContain(
      'data file itself',
    );
    expect(notesIn(file)).toEqual(['before', 'after']);
  });
});

describe('the command', () => {
  const CLI = 'bot/store/restore-cli.ts';
  let compiled: Compiled;
  beforeAll(() => {
    compiled = compile([CLI]);
  }, 60_000);
  afterAll(() => compiled.remove());

  async function run(dataDir: string, ...args: readonly string[]) {
    const child = compiled.start(CLI, args, { DATA_DIR: dataDir });
    return { code: await child.exit, ...child.written };
  }

  it.each([memberFile, roomFile])('restores: %o', async (fileIn) => {
    const folder = newFolder();
    const { file, store, backup } = await backedUp(fileIn(folder));
    store.close();
    const done = await run(folder, backup, ...(fileIn === roomFile ? ['--room'] : []));
    expect(done).toMatchObject({ code: 0, err: '' });
    expect(done.out).toContain(`Restored ${file}.\n`);
    expect(done.out).toContain('-replaced-');
    expect(notesIn(file)).toEqual(['before']);
  });

  it('says what is wrong with exit code 78', async () => {
    const folder = newFolder();
    const { backup } = await backedUp(memberFile(folder));
    const running = await run(folder, backup);
    expect(running).toMatchObject({ code: 78, out: '' });
    expect(running.err).toBe(
      'Another bot is already running on this DATA_DIR.\nStop it first, or give this one a folder of its own.\n',
    );
    expect(await run(folder, 'nowhere.sqlite')).toEqual({
      code: 78,
      out: '',
      err: 'There is no such backup file.\nnowhere.sqlite\n',
    });
  });

  it.each([[[]], [['a', 'b']], [['--what', 'a']]])(
    'says how it is used with exit code 64: %j',
    async (args) => {
      expect(await run(newFolder(), ...args)).toMatchObject({
        code: 64,
        err: expect.stringMatching(/^Usage: /),
      });
    },
  );
});
