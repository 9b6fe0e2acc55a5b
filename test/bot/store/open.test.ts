import { existsSync, mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import { connect } from '../../../bot/store/connection.ts';
import { migrations } from '../../../bot/store/migrations.ts';
import { openStore } from '../../../bot/store/open.ts';
import type { Problem } from '../../../core/problem.ts';
import { problemOf } from '../../commands/text.ts';
import { ADA, alkalinity, newFile, newFolder, NOW_MS, opened, profile, raw } from './place.ts';

function refusal(file: string): Problem {
  return problemOf(() => openStore({ file, nowMs: () => NOW_MS }));
}

describe('opening', () => {
  it('makes the folder, for nobody else to read', () => {
    const file = join(newFolder(), 'var', 'deep', 'sumpside.sqlite');
    opened(file);
    expect(statSync(join(file, '..')).mode & 0o077).toBe(0);
  });

  it('finds what was kept before', () => {
    const file = newFile();
    const store = opened(file);
    const { id } = store.keepFor(ADA).addTank(profile('Reef'));
    const entry = store.keepFor(ADA).addEntry(id, alkalinity(8.2, 0, 'a note'));
    store.close();
    expect(opened(file).keepFor(ADA).lastEntry(id)).toEqual(entry);
  });

  it('takes the file with full durability', () => {
    const { db } = connect(newFile());
    const settings = ['journal_mode', 'synchronous', 'main.locking_mode', 'foreign_keys', 'secure_delete'];
    const values = settings.map((name) => db.pragma(name, { simple: true }));
    db.close();
    expect(values).toEqual(['wal', 2, 'exclusive', 1, 1]);
  });

  it('leaves one file when it is closed', () => {
    const file = newFile();
    const store = opened(file);
    store.keepFor(ADA).addTank(profile('Reef'));
    store.close();
    expect(['-wal', '-shm', '-journal'].filter((end) => existsSync(file + end))).toEqual([]);
  });
});

describe('a folder or file that cannot be used', () => {
  it('is explained when a file stands where the folder should be', () => {
    const blocked = join(newFolder(), 'file');
    writeFileSync(blocked, '');
    const problem = refusal(join(blocked, 'sub', 'sumpside.sqlite'));
    expect(problem).toMatchObject({
      field: 'DATA_DIR',
      message: 'The bot cannot write its data file in DATA_DIR.',
    });
    expect(problem.hint).toContain(join(blocked, 'sub'));
  });

  it('is explained when a folder stands where the file should be', () => {
    const file = newFile();
    mkdirSync(file);
    expect(refusal(file).message).toBe('The bot cannot write its data file in DATA_DIR.');
  });

  it.each([
    ['words', Buffer.from('not a database, only some words, and enough of them '.repeat(20))],
    ['zeros', Buffer.alloc(8192)],
    [
      'the head of a database and then noise',
      Buffer.concat([Buffer.from('SQLite format 3\0'), Buffer.alloc(5000, 7)]),
    ],
  ])('is explained when it holds %s, and left as it is', (_, bytes) => {
    const file = newFile();
    writeFileSync(file, bytes);
    expect(refusal(file)).toMatchObject({
      field: 'DATA_DIR',
      message: expect.stringContaining('damaged or was not made'),
    });
    expect(readFileSync(file).equals(bytes)).toBe(true);
  });

  it("is explained when it is another program's database, and left as it is", () => {
    const file = newFile();
    raw(file, (db) => db.exec('CREATE TABLE recipe (name TEXT)'));
    const before = readFileSync(file);
    expect(refusal(file).message).toContain('not made by this bot');
    expect(readFileSync(file).equals(before)).toBe(true);
  });

  it('is explained when a newer bot made it', () => {
    const file = newFile();
    opened(file).close();
    const newer = migrations.length + 1;
    raw(file, (db) => db.pragma(`user_version = ${newer}`));
    expect(refusal(file).message).toBe(
      `The data file has version ${newer}; this bot knows versions up to ${migrations.length}.`,
    );
    expect(raw(file, (db) => db.pragma('user_version', { simple: true }))).toBe(newer);
  });

  it('is explained when a table it needs is gone, as a bug', () => {
    const file = newFile();
    opened(file).close();
    raw(file, (db) => db.exec('DROP TABLE addition'));
    expect(() => openStore({ file, nowMs: () => NOW_MS })).toThrow(Database.SqliteError);
    raw(file, (db) => expect(db.pragma('locking_mode', { simple: true })).toBe('normal'));
  });
});

describe('the schema', () => {
  const insert =
    "INSERT INTO person (id, discord_id, created_ms) VALUES (1, '100000000000000001', 0), (2, 'local', 0)";
  const tank =
    "INSERT INTO tank (id, person, name, kind, net_volume_l, volume_basis, units, targets) VALUES (1, 1, 'A', 'mixed', 1, '', '{}', '{}')";

  const reminder = 'INSERT INTO reminder (person, tank, text, parameters, anchor, zone, rule) VALUES';
  const handOver =
    'INSERT INTO hand_over (owner, sitter, tank, from_ms, until_ms, state, news, wake_ms) VALUES';

  it.each([
    ["a reading of another's tank", 'INSERT INTO reading VALUES (1, 2, 0, 1, 2, 8)'],
    ["an entry of another's tank", 'INSERT INTO entry (person, tank, at_ms, made_ms) VALUES (2, 1, 0, 0)'],
    [
      "an addition to another's tank",
      'INSERT INTO addition (person, tank, at_ms, parameter, rise) VALUES (2, 1, 0, 2, 1)',
    ],
    ["a reminder of another's tank", `${reminder} (2, 1, 'x', '[]', '', '', '{}')`],
    ["a hand-over of another's tank", `${handOver} (2, 1, 1, 0, 1, 'asked', 'ended', 0)`],
    ['a hand-over to oneself', `${handOver} (1, 1, 1, 0, 1, 'asked', 'ended', 0)`],
    ['a hand-over that ends before it begins', `${handOver} (1, 2, 1, 1, 0, 'asked', 'ended', 0)`],
    ['a notice for nobody', "INSERT INTO notice (person, text, made_ms) VALUES (3, 'x', 0)"],
    ['a server that is no Discord id', "INSERT INTO server (id, settings) VALUES ('12', '{}')"],
    ["another's tank in use", 'UPDATE person SET tank_in_use = 1 WHERE id = 2'],
    ['a person that is no Discord id', "INSERT INTO person (discord_id, created_ms) VALUES ('12', 0)"],
    [
      'a person with the key 0',
      "INSERT INTO person (id, discord_id, created_ms) VALUES (0, '100000000000000002', 0)",
    ],
    ['words as a value', "INSERT INTO reading VALUES (1, 2, 0, 1, 1, 'eight')"],
  ])('refuses %s', (_, wrong) => {
    const file = newFile();
    opened(file).close();
    raw(file, (db) => {
      db.pragma('foreign_keys = ON');
      db.exec(`${insert}; ${tank}`);
      expect(() => db.exec(wrong)).toThrow(/constraint failed|cannot store/);
    });
  });
});
