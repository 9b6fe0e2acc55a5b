import { describe, expect, it } from 'vitest';
import {
  MOST_REMINDER_LETTERS,
  MOST_REMINDERS,
  type Plan,
  type Progress,
} from '../../../commands/reminder.ts';
import type { Rule } from '../../../core/schedule/rule.ts';
import { problemOf } from '../../commands/text.ts';
import { ADA, atHour, BEA, newFile, opened, planned, profile } from './place.ts';

const rules: readonly Rule[] = [
  { every: 'once' },
  { every: 'hours', count: 12 },
  { every: 'weeks', count: 2, on: [1, 6] },
  { every: 'months', count: 3, on: { nth: 'last', weekday: 7 } },
  { every: 'months', count: 1, on: 31 },
  { every: 'after', days: 10 },
];

describe('a reminder', () => {
  it('is kept in every part, and found again by another bot', () => {
    const file = newFile();
    const store = opened(file);
    const keep = store.keepFor(ADA);
    const { id: tankId } = keep.addTank(profile('Reef'));
    const plan: Plan = {
      text: 'test alkalinity',
      parameters: ['alkalinity', 'ph', 'temperature'],
      tankId,
      anchor: '2026-01-31 09:00',
      zone: 'America/New_York',
      rule: { every: 'months', count: 1, on: 31 },
      times: 5,
      place: { kind: 'channel', serverId: '400000000000000004', channelId: '500000000000000005' },
    };
    const progress: Progress = {
      nextMs: atHour(1),
      againMs: atHour(2),
      pause: { fromMs: atHour(3), untilMs: atHour(4) },
      lastDoneMs: atHour(-5),
      trouble: 'The channel is gone.',
    };
    const made = keep.addReminder(plan, progress);
    expect(made).toEqual({ ...plan, ...progress, id: made.id });
    store.close();
    expect(opened(file).keepFor(ADA).reminders()).toEqual([made]);
  });

  it.each(rules)('keeps the rule %o', (rule) => {
    const keep = opened().keepFor(ADA);
    keep.addReminder(planned('x', { rule }), { nextMs: atHour(0) });
    expect(keep.reminders()[0]?.rule).toEqual(rule);
  });

  it('is replaced, moved and removed by its owner', () => {
    const keep = opened().keepFor(ADA);
    const { id } = keep.addReminder(planned('test'), { nextMs: atHour(1) });
    const changed = keep.changeReminder(id, planned('clean', { times: 3 }), { nextMs: atHour(2) });
    expect(changed).toEqual({ ...planned('clean', { times: 3 }), id, nextMs: atHour(2) });
    const moved = keep.moveReminder(id, '2026-04-01 10:30', { againMs: atHour(3), lastDoneMs: atHour(0) });
    expect(moved).toMatchObject({ text: 'clean', anchor: '2026-04-01 10:30', againMs: atHour(3) });
    expect(moved?.nextMs).toBeUndefined();
    expect(keep.reminder(id)).toEqual({ reminder: moved, mine: true });
    expect([keep.removeReminder(id), keep.removeReminder(id)]).toEqual([true, false]);
    expect([keep.reminder(id), keep.moveReminder(id, '2026-04-01 10:30', {})]).toEqual([
      undefined,
      undefined,
    ]);
  });

  it('never gets the id of one that was removed', () => {
    const keep = opened().keepFor(ADA);
    const { id } = keep.addReminder(planned('a'), {});
    keep.removeReminder(id);
    expect(keep.addReminder(planned('b'), {}).id).toBeGreaterThan(id);
  });

  it('goes with its tank, and only with that', () => {
    const keep = opened().keepFor(ADA);
    const [reef, nano] = ['Reef', 'Nano'].map((name) => keep.addTank(profile(name)).id);
    for (const tankId of [reef, nano, undefined]) keep.addReminder(planned(`of ${tankId}`, { tankId }), {});
    keep.removeTank(reef ?? 0);
    expect(keep.reminders().map(({ tankId }) => tankId)).toEqual([nano, undefined]);
  });

  it("is refused for another's tank as for none", () => {
    const store = opened();
    const theirs = store.keepFor(BEA).addTank(profile('Beas')).id;
    const keep = store.keepFor(ADA);
    const { id } = keep.addReminder(planned('x'), {});
    const refusals = [theirs, 999].flatMap((tankId) => [
      problemOf(() => keep.addReminder(planned('x', { tankId }), {})).message,
      problemOf(() => keep.changeReminder(id, planned('x', { tankId }), {})).message,
    ]);
    expect(new Set(refusals)).toEqual(new Set(['You have no such tank.']));
    expect(keep.reminders()).toHaveLength(1);
  });
});

describe('limits of reminders', () => {
  it('refuses one more than may be, and then all of what was given', () => {
    const keep = opened().keepFor(ADA);
    keep.addReminders(Array.from({ length: MOST_REMINDERS - 1 }, (_, i) => [planned(`${i}`), {}] as const));
    const two = [planned('a'), planned('b')].map((plan) => [plan, {}] as const);
    expect(problemOf(() => keep.addReminders(two)).limit).toBe(`at most ${MOST_REMINDERS}`);
    expect(keep.reminders()).toHaveLength(MOST_REMINDERS - 1);
    keep.addReminder(planned('last'), {});
    expect(problemOf(() => keep.addReminder(planned('more'), {})).field).toBe('reminder');
  });

  it('keeps nothing, not even the member, when a later one of several is wrong', () => {
    const store = opened();
    const wrong = planned('b', { zone: 'Mars/Crater' });
    expect(
      problemOf(() =>
        store.keepFor(ADA).addReminders([
          [planned('a'), {}],
          [wrong, {}],
        ]),
      ).field,
    ).toBe('zone');
    expect(store.personCount()).toBe(0);
  });

  it.each([
    ['text', planned('x'.repeat(MOST_REMINDER_LETTERS + 1))],
    ['text', planned('  ')],
    ['zone', planned('x', { zone: 'EST' })],
  ])('refuses a wrong %s', (field, plan) => {
    const keep = opened().keepFor(ADA);
    expect(problemOf(() => keep.addReminder(plan, {})).field).toBe(field);
  });

  it('takes an anchor that is no local time for a bug', () => {
    const keep = opened().keepFor(ADA);
    expect(() => keep.addReminder(planned('x', { anchor: 'tomorrow' }), {})).toThrow('an anchor is');
  });
});

describe('a time zone', () => {
  it("is the member's own, and a tank can have another", () => {
    const store = opened();
    const keep = store.keepFor(ADA);
    expect(keep.zone()).toBeUndefined();
    keep.setZone('Asia/Tokyo');
    const tank = keep.addTank(profile('Office', { zone: 'Europe/Paris' }));
    expect([keep.zone(), tank.zone, keep.tanks()[0]?.zone]).toEqual([
      'Asia/Tokyo',
      'Europe/Paris',
      'Europe/Paris',
    ]);
    expect(store.keepFor(BEA).zone()).toBeUndefined();
    expect(problemOf(() => keep.setZone('Mars/Crater'))).toMatchObject({
      field: 'zone',
      given: 'Mars/Crater',
    });
    expect(problemOf(() => keep.editTank(tank.id, profile('Office', { zone: 'EST' }))).field).toBe('zone');
    expect(keep.zone()).toBe('Asia/Tokyo');
  });
});

it("units are the member's own, kept and exported", () => {
  const store = opened();
  const keep = store.keepFor(ADA);
  expect(keep.units()).toEqual({});
  keep.setUnits({ volume: 'US gal', temperature: '°F' });
  keep.setUnits({ ...keep.units(), length: 'in' });
  expect(keep.units()).toEqual({ volume: 'US gal', length: 'in', temperature: '°F' });
  expect(keep.exportAll()).toMatchObject({ units: { volume: 'US gal', length: 'in', temperature: '°F' } });
  expect(store.keepFor(BEA).units()).toEqual({});
});

it('the locale is noted of somebody of whom something is kept, and of nobody else', () => {
  const store = opened();
  const [keep, nobody] = [store.keepFor(ADA), store.keepFor(BEA)];
  keep.setZone('Asia/Tokyo');
  for (const each of [keep, nobody]) each.noteLocale('pt-BR');
  expect([keep.locale(), nobody.locale()]).toEqual(['pt-BR', undefined]);
  expect(keep.exportAll()).toMatchObject({ locale: 'pt-BR' });
});

it('exports reminders with ISO times, and a hand-over without the other', () => {
  const store = opened();
  const keep = store.keepFor(ADA);
  const { id: tankId } = keep.addTank(profile('Reef'));
  keep.addReminder(planned('test', { tankId, parameters: ['calcium'] }), {
    nextMs: atHour(0),
    pause: { fromMs: atHour(1) },
  });
  keep.addHandOver({ sitterId: BEA, tankId, fromMs: atHour(0), untilMs: atHour(24) });
  keep.setZone('Asia/Tokyo');
  const handOver = { from: '2026-03-14T09:30:00.000Z', until: '2026-03-15T09:30:00.000Z', state: 'asked' };
  expect(keep.exportAll()).toMatchObject({
    zone: 'Asia/Tokyo',
    reminders: [
      {
        text: 'test',
        parameters: ['calcium'],
        tankId,
        zone: 'Europe/Amsterdam',
        nextAt: '2026-03-14T09:30:00.000Z',
        pausedFrom: '2026-03-14T10:30:00.000Z',
        pausedUntil: undefined,
      },
    ],
    handOvers: [{ as: 'owner', tankId, ...handOver }],
    notices: [],
  });
  expect(store.keepFor(BEA).exportAll()).toMatchObject({
    reminders: [],
    handOvers: [{ as: 'sitter', tankId: undefined, ...handOver }],
  });
  expect(JSON.stringify(keep.exportAll())).not.toContain(BEA);
  expect(JSON.stringify(store.keepFor(BEA).exportAll())).not.toContain(ADA);
});
