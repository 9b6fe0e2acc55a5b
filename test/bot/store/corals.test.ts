import { describe, expect, it } from 'vitest';
import { MOST_CORALS, MOST_LIGHT_POINTS, type NewPlacing } from '../../../commands/placed.ts';
import { problemOf } from '../../commands/text.ts';
import { ADA, BEA, newFile, NOW_MS, opened, placing, profile, SPOT } from './place.ts';

function reef(file?: string) {
  const store = opened(file);
  const keep = store.keepFor(ADA);
  return { store, keep, tank: keep.addTank(profile('Reef')).id };
}

const whole: NewPlacing = {
  coralId: 'hammer-coral-branching',
  label: 'Old green',
  spot: { xCm: 30, yCm: 12.5, zCm: 20 },
  rough: true,
  diameterCm: 9.5,
  origin: 'wild',
  since: '2025-12-31',
};

describe('a coral', () => {
  it('is kept in every part, and found again by another bot', () => {
    const file = newFile();
    const { store, keep, tank } = reef(file);
    const made = [whole, placing()].map((one) => keep.addCoral(tank, one));
    expect(made).toEqual([
      { ...whole, id: 1 },
      { ...placing(), id: 2 },
    ]);
    store.close();
    expect(opened(file).keepFor(ADA).corals(tank)).toEqual(made);
  });

  it('is changed and removed, and its number is never given again', () => {
    const { keep, tank } = reef();
    const id = keep.addCoral(tank, whole)?.id ?? expect.unreachable();
    expect(keep.changeCoral(tank, id, placing())).toEqual({ ...placing(), id });
    expect(keep.corals(tank)).toEqual([{ ...placing(), id }]);
    expect([keep.removeCoral(tank, id), keep.removeCoral(tank, id)]).toEqual([true, false]);
    expect(keep.changeCoral(tank, id, whole)).toBeUndefined();
    expect(keep.addCoral(tank, whole)?.id).toBeGreaterThan(id);
  });

  it('is of one tank, and goes with it', () => {
    const { keep, tank } = reef();
    const nano = keep.addTank(profile('Nano')).id;
    const id = keep.addCoral(tank, whole)?.id ?? expect.unreachable();
    keep.addLightPoints(tank, [{ spot: SPOT, ppfd: 1, atMs: NOW_MS }]);
    expect([keep.changeCoral(nano, id, placing()), keep.removeCoral(nano, id)]).toEqual([undefined, false]);
    keep.removeTank(tank);
    expect([keep.corals(tank), keep.lightPoints(tank), keep.corals(nano)]).toEqual([[], [], []]);
  });

  it("has no place in another's tank", () => {
    const { store, tank } = reef();
    const bea = store.keepFor(BEA);
    bea.addTank(profile('Beas'));
    expect([bea.addCoral(tank, whole), bea.addCoral(999, whole)]).toEqual([undefined, undefined]);
    expect(bea.addLightPoints(tank, [{ spot: SPOT, ppfd: 1, atMs: NOW_MS }])).toEqual([]);
  });

  it.each([
    ['coral', { coralId: 'no-such-coral' }],
    ['label', { label: 'x'.repeat(41) }],
    ['from the left', { spot: { ...SPOT, xCm: -1 } }],
    ['from the bottom', { spot: { ...SPOT, zCm: Number.NaN } }],
    ['size', { diameterCm: 0 }],
    ['since', { since: '2025-02-30' }],
  ] as const)('is refused for a wrong %s', (field, more) => {
    const { keep, tank } = reef();
    expect(problemOf(() => keep.addCoral(tank, placing(more))).field).toBe(field);
    expect(keep.corals(tank)).toEqual([]);
  });

  it('is refused when the tank is full', () => {
    const { keep, tank } = reef();
    for (let i = 0; i < MOST_CORALS; i++) keep.addCoral(tank, placing());
    expect(problemOf(() => keep.addCoral(tank, placing()))).toMatchObject({
      field: 'coral',
      message: 'There is room for 150 corals a tank.',
    });
    expect(keep.addCoral(keep.addTank(profile('Nano')).id, placing())).toBeDefined();
  });
});

const point = (hours: number) => ({ spot: SPOT, ppfd: 100 + hours, atMs: NOW_MS + hours * 3_600_000 });

describe('light readings', () => {
  it('come oldest first, and one can be removed', () => {
    const { keep, tank } = reef();
    const made = keep.addLightPoints(tank, [point(2), point(1)]);
    expect(made.map(({ ppfd }) => ppfd)).toEqual([101, 102]);
    expect(keep.lightPoints(tank)).toEqual(made);
    const [first] = made;
    expect(keep.removeLightPoint(tank, first?.id ?? 0)).toBe(true);
    expect(keep.lightPoints(tank)).toEqual(made.slice(1));
  });

  it('let the oldest go when there are too many', () => {
    const { keep, tank } = reef();
    keep.addLightPoints(
      tank,
      Array.from({ length: MOST_LIGHT_POINTS }, (_, i) => point(i)),
    );
    expect(keep.addLightPoints(tank, [point(-1)]), 'older than all that stay').toEqual([]);
    keep.addLightPoints(tank, [point(500)]);
    const kept = keep.lightPoints(tank);
    expect(kept).toHaveLength(MOST_LIGHT_POINTS);
    expect([kept[0]?.ppfd, kept.at(-1)?.ppfd]).toEqual([101, 600]);
  });

  it('are refused all together when one cannot be', () => {
    const { keep, tank } = reef();
    expect(problemOf(() => keep.addLightPoints(tank, [point(0), { ...point(0), ppfd: -1 }])).field).toBe(
      'light',
    );
    expect(keep.lightPoints(tank)).toEqual([]);
  });
});

describe('the glass', () => {
  it('is kept with the flow, and taken back', () => {
    const { keep, tank } = reef();
    const glass = { box: { lengthCm: 117.6, widthCm: 47.6, heightCm: 46 }, flow: 'left to right' } as const;
    expect(keep.setGlass(tank, glass)).toBe(true);
    keep.editTank(tank, profile('Pantry'));
    expect(keep.glass(tank)).toEqual(glass);
    expect(keep.setGlass(tank, {})).toBe(true);
    expect(keep.glass(tank)).toEqual({});
    expect(problemOf(() => keep.setGlass(tank, { box: { ...glass.box, widthCm: 0 } })).field).toBe('width');
  });
});

it('exports glass, corals and light readings', () => {
  const { keep, tank } = reef();
  keep.setGlass(tank, { flow: 'changing' });
  keep.addCoral(tank, whole);
  keep.addLightPoints(tank, [{ spot: SPOT, ppfd: 150, atMs: NOW_MS }]);
  expect(keep.exportAll()).toMatchObject({
    tanks: [
      {
        glass: { flow: 'changing' },
        corals: [whole],
        lightPoints: [{ spot: SPOT, ppfd: 150, measuredAt: '2026-03-14T09:30:00.000Z' }],
      },
    ],
  });
});
