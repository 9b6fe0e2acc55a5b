import { beforeEach, describe, expect, it } from 'vitest';
import type { Keep } from '../../../commands/keep.ts';
import { render } from '../../../bot/discord/message/render.ts';
import { openStore } from '../../../bot/store/open.ts';
import { problemOf, textOf } from '../text.ts';
import { as, NOW_MS } from './member.ts';

const [adaId, beaId, cydId] = ['100000000000000001', '100000000000000002', '100000000000000003'];
const HOUR_MS = 3_600_000;
const grant = `/tank show-to who:${beaId}`;
const look = `/tank shown by:${adaId}`;

let clockMs: number;
let ada: Keep;
let bea: Keep;

beforeEach(() => {
  clockMs = NOW_MS;
  const { keepFor } = openStore({ file: ':memory:', nowMs: () => clockMs });
  [ada, bea] = [keepFor(adaId), keepFor(beaId)];
  as(ada)(
    '/tank new name:Pantry size:120 x 50 x 50 cm measured:inside kind:large-polyp hours:9 targets:alk 8-9',
  );
  const [tank] = ada.tanks();
  if (tank === undefined) return expect.unreachable();
  const values = [
    { parameter: 'alkalinity', value: 7.4 },
    { parameter: 'potassium', value: 391 },
  ] as const;
  ada.addEntry(tank.id, { atMs: NOW_MS - 30 * HOUR_MS, values: values.slice(0, 1) });
  ada.addEntry(tank.id, { atMs: NOW_MS - 5 * HOUR_MS, values, note: 'sesame' });
  ada.addCoral(tank.id, {
    coralId: 'torch-coral',
    label: 'the big one',
    spot: { xCm: 100, yCm: 40, zCm: 5 },
    rough: true,
    diameterCm: 12,
    origin: 'unknown',
  });
});

const whole = (given: ReturnType<ReturnType<typeof as>>): string =>
  `${textOf(given)}\n${(given.table?.rows ?? []).map((row) => row.join(' | ')).join('\n')}`;

describe('/tank show-to', () => {
  it('lets someone see the tank for 24 hours, and says what and until when', () => {
    const given = as(ada)(grant);
    expect(given.headline).toBe('They may see Pantry for 24 hours, and then no more.');
    expect(given.facts).toMatchObject([
      { label: 'may see it', personId: beaId, instant: { atMs: NOW_MS + 24 * HOUR_MS } },
    ]);
    expect(textOf(given)).toMatch(/do not see: notes, reminders, your other tanks/);
    expect(as(ada)('/tank show-to').headline).toBe('One helper sees Pantry now.');
  });

  it('is taken back at once by its button, by stop:yes for one, and for all', () => {
    const [button] = as(ada)(grant).next;
    expect(button).toEqual({
      label: 'Take it back',
      command: 'tank show-to',
      input: { who: beaId, stop: 'yes', tank: 'Pantry' },
    });
    expect(as(ada)(`${grant} stop:yes`).headline).toBe('Taken back: they see Pantry no more.');
    expect(as(bea)(look).headline).toBe('They show you no tank now.');
    expect(as(ada)(`${grant} stop:yes`).headline).toMatch(/did not see Pantry/);
    for (const id of [beaId, cydId]) as(ada)(`/tank show-to who:${id}`);
    expect(as(ada)('/tank show-to').next.map(({ label }) => label)).toEqual([
      'Take it back from no. 1',
      'Take it back from no. 2',
    ]);
    as(ada)('/tank show-to stop:yes');
    expect(as(ada)('/tank show-to').headline).toBe('Nobody but you sees Pantry.');
    expect(as(bea)('/tank shown').headline).toBe('Nobody shows you a tank now.');
  });

  it('has room for five, and none for oneself', () => {
    for (const last of [3, 4, 5, 6, 7]) as(ada)(`/tank show-to who:10000000000000000${last}`);
    expect(problemOf(() => as(ada)(grant)).message).toBe('There is room for 5 helpers at a time a tank.');
    expect(problemOf(() => as(ada)(`/tank show-to who:${adaId}`)).field).toBe('who');
  });
});

describe('/tank shown', () => {
  it('shows what /tank show does, with last readings and corals, and no more', () => {
    as(ada)(grant);
    const given = as(bea)(look);
    expect(given.headline).toBe(as(ada)('/tank show').headline);
    const own = as(ada)('/tank show');
    expect(given.facts.map(({ label }) => label)).toEqual([
      'whose',
      'you see it until',
      ...own.facts.map(({ label }) => label),
      'coral 1',
    ]);
    const text = whole(given);
    for (const part of [
      'alkalinity | 7.4 dKH | 5 hours ago | 8 to 9 dKH | own',
      'potassium | 391 mg/L | 5 hours ago | none',
      'calcium | not logged |  |',
      'coral 1: the big one, right, back, low',
      '12 cm wide',
    ]) {
      expect(text).toContain(part);
    }
    expect(text).not.toContain('sesame');
    expect(given.facts[0]).toMatchObject({ personId: adaId });
    expect(given.next).toEqual([]);
  });

  it('leaves room for the readings where there are many corals', () => {
    const [tank] = ada.tanks();
    for (let i = 0; i < 24; i++) {
      const [{ id: _, ...placing } = expect.unreachable()] = ada.corals(tank?.id ?? 0);
      ada.addCoral(tank?.id ?? 0, { ...placing, label: `number ${i} of a long row of torches` });
    }
    as(ada)(grant);
    const given = as(bea)(look);
    expect(given.facts.at(-1)).toEqual({ label: 'more corals', value: '5' });
    expect(JSON.stringify(render(given).body)).toMatch(/potassium +391 mg/);
  });

  it('is over after 24 hours', () => {
    as(ada)(grant);
    clockMs += 24 * HOUR_MS;
    expect(as(bea)(look).headline).toBe('They show you no tank now.');
    expect(as(bea)(`${look} tank:Pantry`).headline).toBe('They show you no tank now.');
  });

  it('lists what is shown, and asks which where there is more than one', () => {
    as(ada)('/tank new name:Pond volume:90 L');
    as(ada)('/tank new name:Secret volume:10 L');
    as(ada)(`${grant} tank:Pantry`);
    expect(as(bea)(look).headline).toMatch(/^Pantry/);
    as(ada)(`${grant} tank:Pond`);
    const problem = problemOf(() => as(bea)(look));
    expect([problem.field, problem.choices]).toEqual(['tank', ['Pantry', 'Pond']]);
    expect(as(bea)(`${look} tank:pond`).headline).toMatch(/^Pond/);
    expect(problemOf(() => as(bea)(`${look} tank:Secret`)).choices).toEqual(['Pantry', 'Pond']);
    const all = as(bea)('/tank shown');
    expect(all.facts.map(({ label, personId }) => [label, personId])).toEqual([
      ['Pantry', adaId],
      ['Pond', adaId],
    ]);
    expect(all.next.map(({ input }) => input)).toContainEqual({ by: adaId, tank: 'Pond' });
  });

  it('tells a stranger the same of a keeper as of nobody', () => {
    as(ada)(`/tank show-to who:${cydId}`);
    expect(as(bea)(look)).toEqual(as(bea)('/tank shown by:999999999999999999'));
  });
});
