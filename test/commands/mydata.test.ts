import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openStore, type Store } from '../../bot/store/open.ts';
import type { Keep } from '../../commands/keep.ts';
import { mydataCommands } from '../../commands/mydata.ts';
import { problemOf, textOf } from './text.ts';

const profile = {
  kind: 'mixed',
  netVolumeL: 250,
  volumeBasis: 'counted',
  units: {},
  targets: {},
} as const;

let store: Store;
let keep: Keep;

beforeEach(() => {
  store = openStore({ file: ':memory:', nowMs: () => 0 });
  keep = store.keepFor('1100000000000000011');
});

afterEach(() => store.close());

function run(name: string, input: Record<string, string> = {}) {
  const command = mydataCommands.find(({ path }) => path[1] === name);
  if (command === undefined) throw new Error(name);
  return command.run(input, { nowMs: 0, keep });
}

function addTank(): void {
  const { id } = keep.addTank({ ...profile, name: 'Pantry' });
  const values = [
    { parameter: 'alkalinity', value: 8.3 },
    { parameter: 'calcium', value: 430 },
  ] as const;
  keep.addEntry(id, { atMs: 0, values, note: 'after the change' });
  keep.addAddition(id, { atMs: 0, compound: 'soda ash', massG: 4, parameter: 'alkalinity', rise: 0.8 });
}

describe('/mydata', () => {
  it('is private', () => expect(mydataCommands.map((each) => each.private)).toEqual([true, true]));

  it('says so where nobody is known', () => {
    for (const command of mydataCommands) {
      expect(problemOf(() => command.run({}, { nowMs: 0 })).hint).toContain('direct message');
    }
  });
});

describe('/mydata export', () => {
  it('gives everything of exportAll as JSON', () => {
    addTank();
    const { file, facts } = run('export');
    expect(JSON.parse(file?.text ?? '')).toEqual(JSON.parse(JSON.stringify(keep.exportAll())));
    expect(file?.text).toContain('after the change');
    expect(file?.name).toMatch(/\.json$/);
    expect(facts).toEqual([{ label: 'Pantry', value: '2 readings, 1 addition' }]);
  });

  it('works with nothing kept', () => {
    const { file, headline } = run('export');
    expect(headline).toContain('You have no tank here.');
    expect(JSON.parse(file?.text ?? '')).toMatchObject({ tanks: [] });
  });
});

describe('/mydata erase', () => {
  it('asks once, says what would go, and offers one action', () => {
    addTank();
    const asked = run('erase');
    expect(asked.headline).toContain('Nothing is removed yet.');
    expect(textOf(asked)).toContain('Pantry: 2 readings, 1 addition');
    expect(asked.next).toEqual([
      { label: 'Erase everything', command: 'mydata erase', input: { sure: 'yes' } },
    ]);
    expect(keep.tanks()).toHaveLength(1);
  });

  it('removes everything of this member and nothing of another, and says what backups hold', () => {
    addTank();
    const other = store.keepFor('1100000000000000012');
    other.addTank({ ...profile, name: 'Tide pool' });
    const erased = run('erase', { sure: 'yes' });
    expect(erased.headline).toBe('Everything kept of you is removed.');
    expect(textOf(erased)).toContain('seven days');
    expect(keep.exportAll()).toMatchObject({ tanks: [], keptSince: undefined });
    expect(other.tanks()).toHaveLength(1);
    expect(store.personCount()).toBe(1);
  });

  it('asks too where there are reminders but no tank', () => {
    const zone = 'Asia/Tokyo';
    keep.addReminder(
      {
        text: 'change filter floss',
        parameters: [],
        zone,
        anchor: '2026-03-14 09:00',
        rule: { every: 'days', count: 1 },
        place: { kind: 'direct' },
      },
      { nextMs: 1 },
    );
    keep.setZone(zone);
    const asked = run('erase');
    expect(asked.headline).toContain('Nothing is removed yet.');
    expect(textOf(asked)).toMatch(/reminders: 1[^]*time zone: Asia\/Tokyo/);
    expect(keep.reminders()).toHaveLength(1);
    expect(run('erase', { sure: 'yes' }).headline).toBe('Everything kept of you is removed.');
    expect(store.personCount()).toBe(0);
  });

  it('counts the corals and the light readings of a tank', () => {
    addTank();
    const tankId = keep.tanks()[0]?.id ?? 0;
    const spot = { xCm: 1, yCm: 2, zCm: 3 };
    const coral = { coralId: 'torch-coral', spot, rough: false, diameterCm: 9, origin: 'unknown' } as const;
    keep.addCoral(tankId, coral);
    keep.addLightPoints(tankId, [{ spot, ppfd: 120, atMs: 0 }]);
    expect(run('export').facts).toEqual([
      { label: 'Pantry', value: '2 readings, 1 addition, 1 coral, 1 light reading' },
    ]);
  });

  it('takes away the id too where the tanks are gone already', () => {
    addTank();
    for (const { id } of keep.tanks()) keep.removeTank(id);
    expect(store.personCount()).toBe(1);
    expect(run('erase').headline).toContain('Nothing is kept of you here');
    expect(store.personCount()).toBe(0);
  });

  it('takes no other word for yes', () => {
    addTank();
    expect(problemOf(() => run('erase', { sure: 'no' })).limit).toBe('yes');
    expect(keep.tanks()).toHaveLength(1);
  });
});
