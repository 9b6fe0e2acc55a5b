import { describe, expect, it } from 'vitest';
import { MOST_NAME_LETTERS, MOST_TANKS, type TankProfile } from '../../../commands/keep.ts';
import { MOST_READINGS } from '../../../bot/store/limits.ts';
import { LOCAL_PERSON } from '../../../bot/store/people.ts';
import { problemOf } from '../../commands/text.ts';
import { ADA, addition, alkalinity, BEA, HOUR_MS, NOW_MS, opened, profile } from './place.ts';

function keepOf(person = ADA) {
  return opened().keepFor(person);
}

function withTank() {
  const keep = keepOf();
  return { keep, tankId: keep.addTank(profile('Reef')).id };
}

const full: TankProfile = {
  name: 'Pantry',
  kind: 'small-polyp',
  netVolumeL: 283.9058838,
  displayVolumeL: 300,
  volumeBasis: '75 gal, read as US gallons',
  startedOn: '2024-02-29',
  instrument: 'refractometer',
  lightHours: 9.5,
  units: { volume: 'US gal', alkalinity: 'dKH', temperature: '°F' },
  targets: { alkalinity: [7.5, 8.5], salinity: [34, 35.5] },
};

describe('tanks', () => {
  it('keeps every part of a profile', () => {
    const keep = keepOf();
    const tank = keep.addTank(full);
    expect(tank).toEqual({ ...full, id: tank.id });
    expect(keep.tanks()).toEqual([tank]);
  });

  it('puts the first in use and no later one', () => {
    const keep = keepOf();
    expect(keep.tankInUse()).toBeUndefined();
    const first = keep.addTank(profile('Reef'));
    const second = keep.addTank(profile('Nano'));
    expect(keep.tankInUse()).toEqual(first);
    expect(keep.useTank(second.id)).toBe(true);
    expect(keep.tankInUse()).toEqual(second);
    expect(keep.tanks().map(({ name }) => name)).toEqual(['Reef', 'Nano']);
  });

  it('replaces a profile', () => {
    const keep = keepOf();
    const { id } = keep.addTank(full);
    expect(keep.editTank(id, profile('Reef'))).toEqual({ ...profile('Reef'), id });
    expect(keep.tanks()).toEqual([{ ...profile('Reef'), id }]);
    expect(keep.editTank(id + 1, profile('Other'))).toBeUndefined();
  });

  it('uses the one that is left when the tank in use goes, and asks when two are left', () => {
    const keep = keepOf();
    const [a, b, c] = ['A', 'B', 'C'].map((name) => keep.addTank(profile(name)).id);
    expect(keep.removeTank(a ?? 0)).toBe(true);
    expect(keep.tankInUse()).toBeUndefined();
    keep.useTank(b ?? 0);
    keep.removeTank(b ?? 0);
    expect(keep.tankInUse()?.id).toBe(c);
    expect(keep.removeTank(b ?? 0)).toBe(false);
  });

  it('keeps the tank in use when another goes', () => {
    const keep = keepOf();
    const first = keep.addTank(profile('A'));
    keep.removeTank(keep.addTank(profile('B')).id);
    expect(keep.tankInUse()).toEqual(first);
  });

  it('removes what hangs on a tank, and never gives its id again', () => {
    const { keep, tankId } = withTank();
    const entry = keep.addEntry(tankId, alkalinity(8));
    const made = keep.addAddition(tankId, addition(1));
    keep.removeTank(tankId);
    expect(keep.readings(tankId, {})).toEqual([]);
    expect(keep.additions(tankId, {})).toEqual([]);
    const again = keep.addTank(profile('Reef')).id;
    expect(again).toBeGreaterThan(tankId);
    expect(keep.addEntry(again, alkalinity(8))?.id).toBeGreaterThan(entry?.id ?? Infinity);
    expect(keep.addAddition(again, addition(1))?.id).toBeGreaterThan(made?.id ?? Infinity);
  });

  it('refuses one more than may be', () => {
    const keep = keepOf();
    for (let i = 0; i < MOST_TANKS; i++) keep.addTank(profile(`tank ${i}`));
    expect(problemOf(() => keep.addTank(profile('one more')))).toMatchObject({ field: 'tank' });
    expect(keep.tanks()).toHaveLength(MOST_TANKS);
  });

  it.each([
    ['a name twice, in other letters', 'name', profile('REEF')],
    ['no name', 'name', profile('  ')],
    ['a long name', 'name', profile('x'.repeat(MOST_NAME_LETTERS + 1))],
    ['no volume', 'volume', profile('B', { netVolumeL: 0 })],
    ['an endless volume', 'volume', profile('B', { netVolumeL: Number.POSITIVE_INFINITY })],
    ['a volume that is no number', 'volume', profile('B', { netVolumeL: Number.NaN })],
    ['a day that is not in the calendar', 'started', profile('B', { startedOn: '2023-02-29' })],
    ['a long day', 'light', profile('B', { lightHours: 25 })],
    ['a long basis', 'volume', profile('B', { volumeBasis: 'x'.repeat(201) })],
  ])('refuses %s', (_, field, wrong) => {
    const { keep, tankId } = withTank();
    const other = keep.addTank(profile('Other')).id;
    expect(problemOf(() => keep.addTank(wrong)).field).toBe(field);
    expect(problemOf(() => keep.editTank(other, wrong)).field).toBe(field);
    expect(keep.tanks().map(({ id }) => id)).toEqual([tankId, other]);
  });

  it('keeps nothing of someone whose first tank was refused', () => {
    const store = opened();
    problemOf(() => store.keepFor(ADA).addTank(profile('')));
    expect(store.personCount()).toBe(0);
  });
});

describe('entries', () => {
  it('keeps an entry whole', () => {
    const { keep, tankId } = withTank();
    const values = [
      { parameter: 'salinity', value: 34.9 },
      { parameter: 'alkalinity', value: 7.6000000000000005 },
      { parameter: 'phosphate', value: 0 },
    ] as const;
    const entry = keep.addEntry(tankId, { atMs: NOW_MS - HOUR_MS, values, note: 'after the change' });
    expect(entry).toMatchObject({ atMs: NOW_MS - HOUR_MS, madeMs: NOW_MS, values, note: 'after the change' });
    expect(keep.lastEntry(tankId)).toMatchObject({ id: entry?.id, madeMs: NOW_MS, note: 'after the change' });
    expect(new Set(keep.lastEntry(tankId)?.values)).toEqual(new Set(values));
  });

  it('undoes in the order they were typed, whatever the day they were tested', () => {
    const { keep, tankId } = withTank();
    keep.addEntry(tankId, alkalinity(8, 0));
    keep.addEntry(tankId, alkalinity(7, -48));
    keep.addEntry(tankId, alkalinity(9, -24));
    const undone: number[] = [];
    for (let last = keep.lastEntry(tankId); last !== undefined; last = keep.lastEntry(tankId)) {
      undone.push(last.values[0]?.value ?? Number.NaN);
      expect(keep.removeEntry(tankId, last.id)).toBe(true);
      expect(keep.removeEntry(tankId, last.id)).toBe(false);
    }
    expect(undone).toEqual([9, 7, 8]);
    expect(keep.readings(tankId, {})).toEqual([]);
  });

  it('removes one entry and leaves another of the same moment', () => {
    const { keep, tankId } = withTank();
    const first = keep.addEntry(tankId, alkalinity(8));
    keep.addEntry(tankId, alkalinity(8.1));
    keep.removeEntry(tankId, first?.id ?? 0);
    expect(keep.readings(tankId, {}).map(({ value }) => value)).toEqual([8.1]);
  });

  it('adds many at once or none', () => {
    const { keep, tankId } = withTank();
    expect(keep.addEntries(tankId, [alkalinity(8), alkalinity(8.2, 1)])).toBe(2);
    problemOf(() => keep.addEntries(tankId, [alkalinity(8.4, 2), alkalinity(Number.NaN, 3)]));
    expect(keep.addEntries(tankId, [])).toBe(0);
    expect(keep.addEntries(tankId + 1, [alkalinity(9)])).toBe(0);
    expect(keep.readings(tankId, {}).map(({ value }) => value)).toEqual([8, 8.2]);
  });

  it.each([
    ['no reading', { atMs: NOW_MS, values: [] }, 'reading'],
    ['endless values', alkalinity(Number.POSITIVE_INFINITY), 'alkalinity'],
    ['a time far ahead', { ...alkalinity(8), atMs: 1e15 }, 'at'],
    ['no time', { ...alkalinity(8), atMs: Number.NaN }, 'at'],
    ['a long note', alkalinity(8, 0, 'x'.repeat(501)), 'note'],
    [
      'two values of one parameter',
      { ...alkalinity(8), values: [...alkalinity(8).values, ...alkalinity(9).values] },
      'alkalinity',
    ],
  ])('refuses %s', (_, entry, field) => {
    const { keep, tankId } = withTank();
    expect(problemOf(() => keep.addEntry(tankId, entry)).field).toBe(field);
    expect(keep.lastEntry(tankId)).toBeUndefined();
  });

  it('refuses more readings than a member may keep, over all tanks', () => {
    const { keep, tankId } = withTank();
    const other = keep.addTank(profile('Other')).id;
    const many = Array.from({ length: MOST_READINGS - 1 }, (_, i) => alkalinity(8, -i));
    keep.addEntries(tankId, many);
    expect(problemOf(() => keep.addEntries(other, [alkalinity(8), alkalinity(9)])).limit).toBe(
      'at most 200,000',
    );
    expect(keep.addEntries(other, [alkalinity(8)])).toBe(1);
    expect(problemOf(() => keep.addEntry(tankId, alkalinity(8))).field).toBe('reading');
    expect(keep.readings(tankId, { most: 2 }).map(({ atMs }) => atMs)).toEqual([NOW_MS - HOUR_MS, NOW_MS]);
  });
});

function logged() {
  const { keep, tankId } = withTank();
  keep.addEntry(tankId, alkalinity(8, 0, 'third'));
  keep.addEntry(tankId, {
    atMs: NOW_MS - 2 * HOUR_MS,
    values: [
      { parameter: 'calcium', value: 410 },
      { parameter: 'alkalinity', value: 7 },
    ],
  });
  keep.addEntry(tankId, alkalinity(7.5, -1));
  const values = (query: Parameters<typeof keep.readings>[1]): number[] =>
    keep.readings(tankId, query).map(({ value }) => value);
  return { keep, tankId, values };
}

describe('readings', () => {
  it('come oldest first, with their note', () => {
    const { keep, tankId, values } = logged();
    expect(values({ parameter: 'alkalinity' })).toEqual([7, 7.5, 8]);
    expect(keep.readings(tankId, {}).at(-1)).toEqual({
      parameter: 'alkalinity',
      value: 8,
      atMs: NOW_MS,
      note: 'third',
    });
    expect(values({})).toEqual([7, 410, 7.5, 8]);
  });

  it('come from a range that has both its ends', () => {
    const { values } = logged();
    expect(values({ fromMs: NOW_MS - HOUR_MS })).toEqual([7.5, 8]);
    expect(values({ fromMs: NOW_MS - HOUR_MS + 1 })).toEqual([8]);
    expect(values({ toMs: NOW_MS - HOUR_MS, parameter: 'alkalinity' })).toEqual([7, 7.5]);
    expect(values({ fromMs: NOW_MS, toMs: NOW_MS - 1 })).toEqual([]);
  });

  it('come at most so many, the newest', () => {
    const { values } = logged();
    expect(values({ most: 2 })).toEqual([7.5, 8]);
    expect(values({ most: 3 })).toEqual([410, 7.5, 8]);
    expect(values({ most: 1, toMs: NOW_MS - HOUR_MS })).toEqual([7.5]);
    expect(values({ most: 0 })).toEqual([]);
    expect(values({ most: 99 })).toHaveLength(4);
  });

  it('has the newest of each parameter', () => {
    const { keep, tankId } = logged();
    const latest = keep.latest(tankId);
    expect(latest.map(({ parameter, value }) => [parameter, value])).toEqual([
      ['alkalinity', 8],
      ['calcium', 410],
    ]);
    keep.addEntry(tankId, alkalinity(8.4, 0));
    expect(keep.latest(tankId)[0]?.value, 'of the same moment, the one typed last').toBe(8.4);
  });
});

describe('additions', () => {
  it('are kept, found by range and removed', () => {
    const { keep, tankId } = withTank();
    const late = keep.addAddition(tankId, addition(0.5, 2));
    const early = keep.addAddition(tankId, { atMs: NOW_MS, parameter: 'calcium', rise: 20 });
    expect(keep.additions(tankId, {})).toEqual([early, late]);
    expect(late).toEqual({ ...addition(0.5, 2), id: late?.id });
    expect(keep.additions(tankId, { fromMs: NOW_MS + 1 })).toEqual([late]);
    expect(keep.additions(tankId, { toMs: NOW_MS })).toEqual([early]);
    expect(keep.removeAddition(tankId, early?.id ?? 0)).toBe(true);
    expect(keep.removeAddition(tankId, early?.id ?? 0)).toBe(false);
    expect(keep.addAddition(tankId + 1, addition(1))).toBeUndefined();
  });

  it.each([
    ['a negative mass', { massG: -1 }, 'amount'],
    ['an endless rise', { rise: Number.NEGATIVE_INFINITY }, 'alkalinity'],
    ['a long name', { compound: 'x'.repeat(81) }, 'compound'],
  ])('refuses %s', (_, wrong, field) => {
    const { keep, tankId } = withTank();
    expect(problemOf(() => keep.addAddition(tankId, { ...addition(1), ...wrong })).field).toBe(field);
    expect(keep.additions(tankId, {})).toEqual([]);
  });
});

describe('people', () => {
  it('are kept of only once they keep something', () => {
    const store = opened();
    const keep = store.keepFor(ADA);
    keep.exportAll();
    keep.eraseAll();
    keep.addEntry(1, alkalinity(8));
    expect(store.personCount()).toBe(0);
    keep.addTank(profile('Reef'));
    store.keepFor(BEA).addTank(profile('Reef'));
    store.keepFor(LOCAL_PERSON).addTank(profile('Reef'));
    expect(store.personCount()).toBe(3);
  });

  it.each(['', '1234', '1'.repeat(21), 'Local', "1' OR '1'='1", '１２３４５６７８９０１２３４５６７'])(
    'have a Discord id, which %j is not',
    (id) => expect(() => opened().keepFor(id)).toThrow('Discord id'),
  );
});
