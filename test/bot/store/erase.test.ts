import { existsSync, readFileSync } from 'node:fs';
import type Database from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import type { Keep } from '../../../commands/keep.ts';
import type { Store } from '../../../bot/store/open.ts';
import type { MemberExport } from '../../../bot/store/export.ts';
import {
  ADA,
  addition,
  alkalinity,
  BEA,
  CYD,
  DAN,
  DAY_MS,
  HOUR_MS,
  newFile,
  NOW_MS,
  opened,
  placing,
  planned,
  profile,
  raw,
  SPOT,
} from './place.ts';

/** A key that no other number in the file can be taken for. */
const ADA_KEY = 987_654_321;

function fill(keep: Keep, mark: string): void {
  for (const name of ['Reef', 'Nano']) {
    const { id } = keep.addTank(profile(`${name} ${mark}`));
    for (let i = 0; i < 40; i++) keep.addEntry(id, alkalinity(8 + i / 100, i, `note of ${mark}`));
    keep.addAddition(id, { ...addition(0.5), compound: `compound of ${mark}` });
    keep.addCoral(id, placing({ label: `coral of ${mark}` }));
    keep.setWatch(id, { parameter: 'nitrate', over: 20 });
    keep.addLightPoints(id, [{ spot: SPOT, ppfd: 120, atMs: NOW_MS }]);
    keep.addReminder(planned(`clean ${mark}`, { tankId: id }), { nextMs: NOW_MS });
  }
}

const ofMembers = [
  'person',
  'tank',
  'entry',
  'reading',
  'addition',
  'coral',
  'light_point',
  'reminder',
  'lease',
  'hand_over',
  'shown_tank',
  'watch',
  'told',
  'held',
  'notice',
];

/** Every cell of every table, indexes' own tables and the counters of ids among them. */
function cells(db: Database.Database): unknown[] {
  const tables = db.prepare<[], string>("SELECT name FROM sqlite_schema WHERE type = 'table'").pluck().all();
  expect(tables.filter((name) => name !== 'server').toSorted()).toEqual(
    [...ofMembers, 'sqlite_sequence'].toSorted(),
  );
  return tables.flatMap((name) => db.prepare<[], unknown[]>(`SELECT * FROM "${name}"`).raw().all().flat());
}

const firstTank = (keep: Keep): number => keep.tanks()[0]?.id ?? expect.unreachable();
const span = { fromMs: NOW_MS, untilMs: NOW_MS + DAY_MS };

/** Ada's first reminder is stopped with a notice, her second is being sent. */
function stopFirst(store: Store): void {
  const [first] = store.due.claim(NOW_MS, 2, HOUR_MS);
  if (first === undefined) return expect.unreachable();
  store.due.stop(first.reminder.id, first.dueMs, { trouble: 'trouble of Adas-own' }, 'notice of Adas-own');
}

function club() {
  const file = newFile();
  opened(file).close();
  raw(file, (db) =>
    db.prepare('INSERT INTO person (id, discord_id, created_ms) VALUES (?, ?, ?)').run(ADA_KEY, ADA, NOW_MS),
  );
  const store = opened(file);
  const [ada, bea] = [store.keepFor(ADA), store.keepFor(BEA)];
  fill(ada, 'Adas-own');
  fill(bea, 'Beas-own');
  ada.setZone('Asia/Tokyo');
  ada.noteLocale('pt-BR');
  ada.setUnits({ volume: 'imp gal', length: 'in' });
  stopFirst(store);
  const [toBea, toCyd] = [BEA, CYD].map((sitterId) => ada.addHandOver({ sitterId, ...span }));
  store.keepFor(BEA).answerHandOver(toBea?.id ?? 0, true);
  store.keepFor(CYD).answerHandOver(toCyd?.id ?? 0, true);
  store.keepFor(ADA).answerHandOver(bea.addHandOver({ sitterId: ADA, ...span }).id, true);
  store.lastingCases.put(ADA, 'said in 1', { moments: [], last: 'words of Adas-own' });
  store.lastingCases.put(BEA, 'said in 1', { moments: [], last: 'words of Beas-own' });
  for (const [personId, id] of [
    [ADA, 'Adas-own'],
    [BEA, 'Beas-own'],
  ] as const)
    store.held.hold({ id, personId, isPrivate: false, kind: 'answer', body: JSON.stringify({ id }) });
  ada.showTo(firstTank(ada), BEA);
  ada.showTo(firstTank(ada), DAN);
  bea.showTo(firstTank(bea), ADA);
  return { file, store, ada, bea };
}

const isAda = (cell: unknown): boolean => cell === ADA_KEY || cell === ADA;

const adas = (cell: unknown): boolean =>
  cell === ADA_KEY || (typeof cell === 'string' && (cell.includes(ADA) || cell.includes('Adas-own')));

describe('erasing', () => {
  it('leaves nothing of the member in any table and all of the others', () => {
    const { file, store, ada, bea } = club();
    const before = exported(bea);
    ada.eraseAll();
    expect(exported(bea)).toEqual({
      ...before,
      handOvers: [],
      shownTanks: [],
      notices: expect.any(Array),
    });
    expect(ada.exportAll()).toMatchObject({
      tanks: [],
      reminders: [],
      handOvers: [],
      shownTanks: [],
      told: [],
      held: [],
      notices: [],
      zone: undefined,
    });
    expect(ada.exportAll()).toMatchObject({ keptSince: undefined });
    expect(store.personCount(), 'the sitter and the helper of whom nothing else was kept go too').toBe(1);
    store.close();
    raw(file, (db) => {
      expect(cells(db).filter(adas)).toEqual([]);
      expect(db.pragma('integrity_check', { simple: true })).toBe('ok');
      expect(db.pragma('foreign_key_check')).toEqual([]);
    });
  });

  it('finds the member everywhere before, so that the search above can fail', () => {
    const { file, store } = club();
    store.close();
    raw(file, (db) => {
      expect(cells(db).filter(adas).length).toBeGreaterThan(80 * 2);
      const empty = ofMembers.filter((table) => db.prepare(`SELECT 1 FROM ${table}`).get() === undefined);
      expect(empty, 'tables the search says nothing of').toEqual([]);
      const held = ofMembers.filter((table) =>
        db.prepare<[], unknown[]>(`SELECT * FROM ${table}`).raw().all().flat().some(isAda),
      );
      expect(held).toEqual(ofMembers.filter((table) => table !== 'lease'));
    });
  });

  it('overwrites what was written, in the file and beside it', () => {
    const { file, ada } = club();
    const bytes = (): string =>
      [file, `${file}-wal`]
        .flatMap((path) => (existsSync(path) ? [readFileSync(path, 'latin1')] : []))
        .join('');
    expect(bytes()).toContain(ADA);
    ada.eraseAll();
    expect(bytes()).not.toContain(ADA);
    expect(bytes()).not.toContain('Adas-own');
    expect(bytes()).toContain('Beas-own');
  });

  it('lets the member begin anew', () => {
    const { ada } = club();
    ada.eraseAll();
    const tank = ada.addTank(profile('Reef'));
    expect(ada.tanks()).toEqual([tank]);
    expect(ada.readings(tank.id, {})).toEqual([]);
  });

  it('does not hand a key left free to whoever held it before', () => {
    const store = opened();
    const [ada, bea] = [store.keepFor(ADA), store.keepFor(BEA)];
    ada.addTank(profile('Reef'));
    ada.eraseAll();
    bea.addTank(profile('Pantry'));
    expect(ada.tanks()).toEqual([]);
    expect(ada.tankInUse()).toBeUndefined();
  });
});

describe('exporting', () => {
  it('gives everything as plain JSON with units and ISO times', () => {
    const keep = opened().keepFor(ADA);
    const tank = keep.addTank(profile('Reef', { targets: { calcium: [400, 450] } }));
    keep.addEntry(tank.id, {
      ...alkalinity(8.2, -1, 'evening'),
      values: [
        { parameter: 'salinity', value: 35 },
        { parameter: 'alkalinity', value: 8.2 },
      ],
    });
    keep.addAddition(tank.id, addition(0.7));
    keep.setWatch(tank.id, { parameter: 'nitrate', over: 20 });
    const { entries, additions, watches, glass, corals, lightPoints, ...shown } =
      exported(keep).tanks[0] ?? expect.unreachable();
    expect([entries.length, additions.length, glass, corals, lightPoints]).toEqual([1, 1, {}, [], []]);
    expect(watches).toEqual([{ parameter: 'nitrate', over: 20, unit: 'mg/L' }]);
    expect(shown).toEqual(JSON.parse(JSON.stringify(tank)));
    expect(exported(keep)).toMatchObject({
      format: 'sumpside-member',
      version: 1,
      exportedAt: '2026-03-14T09:30:00.000Z',
      discordId: ADA,
      keptSince: '2026-03-14T09:30:00.000Z',
      tankInUse: tank.id,
      tanks: [
        {
          entries: [
            {
              testedAt: '2026-03-14T08:30:00.000Z',
              typedAt: '2026-03-14T09:30:00.000Z',
              note: 'evening',
              values: [
                { parameter: 'salinity', value: 35, unit: 'ppt' },
                { parameter: 'alkalinity', value: 8.2, unit: 'dKH' },
              ],
            },
          ],
          additions: [
            {
              addedAt: '2026-03-14T09:30:00.000Z',
              parameter: 'alkalinity',
              rise: 0.7,
              unit: 'dKH',
              compound: 'soda ash',
              massG: 12.5,
            },
          ],
        },
      ],
    });
  });

  it('has every entry, and none of the others', () => {
    const { ada, bea } = club();
    for (const [keep, own, other] of [
      [ada, 'Adas-own', 'Beas-own'],
      [bea, 'Beas-own', 'Adas-own'],
    ] as const) {
      const text = JSON.stringify(keep.exportAll());
      expect(text.split(`note of ${own}`)).toHaveLength(2 * 40 + 1);
      expect(text.split(`coral of ${own}`)).toHaveLength(2 + 1);
      expect(text).not.toContain(other);
    }
  });
});

function exported(keep: Keep): MemberExport {
  return JSON.parse(JSON.stringify(keep.exportAll())) as MemberExport;
}
