import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Keep } from '../../../commands/keep.ts';
import { MOST_HELPERS, SHOWN_MS } from '../../../commands/shown.ts';
import { Problem } from '../../../core/problem.ts';
import {
  ADA,
  alkalinity,
  BEA,
  CYD,
  DAN,
  handClock,
  NOW_MS,
  opened,
  placing,
  profile,
  SPOT,
} from './place.ts';

const MARK = 'Adas-own';

/** A tank with a reading, a note and a coral; its id. */
function moveIn(keep: Keep, name: string, mark = MARK): number {
  const { id } = keep.addTank(profile(`${name} ${mark}`));
  keep.addEntry(id, alkalinity(8.3, -1, `note of ${mark}`));
  keep.addCoral(id, placing({ label: `coral of ${mark}` }));
  keep.addLightPoints(id, [{ spot: SPOT, ppfd: 100, atMs: NOW_MS }]);
  return id;
}

function club() {
  const clock = handClock();
  const store = opened(':memory:', clock.read);
  const [ada, bea] = [store.keepFor(ADA), store.keepFor(BEA)];
  const [reef, nano] = [moveIn(ada, 'Reef'), moveIn(ada, 'Nano')];
  return { clock, store, ada, bea, reef, nano };
}

describe('a tank that is shown', () => {
  it('is seen by the helper: profile, glass, last readings without notes, corals', () => {
    const { ada, bea, reef } = club();
    ada.setGlass(reef, { flow: 'changing' });
    const untilMs = NOW_MS + 24 * 3_600_000;
    expect(ada.showTo(reef, BEA)).toEqual({ helperId: BEA, untilMs });
    expect(ada.viewers(reef)).toEqual([{ helperId: BEA, untilMs }]);
    const [tank] = ada.tanks();
    const showing = { ownerId: ADA, tankId: reef, tankName: tank?.name, untilMs };
    expect(bea.shownToMe()).toEqual([showing]);
    const seen = bea.shownTank(reef);
    expect(seen).toEqual({
      ...showing,
      tank,
      glass: ada.glass(reef),
      latest: [{ parameter: 'alkalinity', value: 8.3, atMs: NOW_MS - 3_600_000 }],
      corals: ada.corals(reef),
    });
    expect(JSON.stringify(seen)).not.toContain('note of');
  });

  it('is over after a day to the millisecond, and a new showing begins a new day', () => {
    const { clock, ada, bea, reef } = club();
    ada.showTo(reef, BEA);
    clock.nowMs += SHOWN_MS - 1;
    expect(bea.shownTank(reef)).toBeDefined();
    clock.nowMs += 1;
    expect([bea.shownTank(reef), bea.shownToMe(), ada.viewers(reef)]).toEqual([undefined, [], []]);
    ada.showTo(reef, BEA);
    clock.nowMs += SHOWN_MS / 2;
    expect(ada.showTo(reef, BEA)?.untilMs).toBe(clock.nowMs + SHOWN_MS);
    expect(ada.viewers(reef)).toHaveLength(1);
  });

  it('is over at once when it is taken back', () => {
    const { ada, bea, reef } = club();
    ada.showTo(reef, BEA);
    expect(ada.hideFrom(reef, BEA)).toBe(true);
    expect([bea.shownTank(reef), bea.shownToMe(), ada.viewers(reef)]).toEqual([undefined, [], []]);
    expect(ada.hideFrom(reef, BEA)).toBe(false);
  });

  it('is over when it is removed, and when its owner is erased', () => {
    const { ada, bea, reef, nano } = club();
    for (const id of [reef, nano]) ada.showTo(id, BEA);
    ada.removeTank(reef);
    expect(bea.shownToMe().map(({ tankId }) => tankId)).toEqual([nano]);
    ada.eraseAll();
    expect([bea.shownToMe(), bea.shownTank(nano)]).toEqual([[], undefined]);
  });

  it('is over when the helper is erased, also for one who comes back', () => {
    const { ada, bea, reef } = club();
    ada.showTo(reef, BEA);
    bea.eraseAll();
    bea.addTank(profile('Pantry'));
    expect([bea.shownTank(reef), ada.viewers(reef)]).toEqual([undefined, []]);
  });

  it('shows no other tank of the owner, and goes no further', () => {
    const { store, ada, bea, reef, nano } = club();
    ada.showTo(reef, BEA);
    expect(bea.shownTank(nano)).toBeUndefined();
    expect(store.keepFor(CYD).shownTank(reef)).toBeUndefined();
    expect(bea.showTo(reef, CYD)).toBeUndefined();
    expect(bea.hideFrom(reef, BEA)).toBe(false);
    expect([bea.tanks(), bea.readings(reef, {}), bea.corals(reef)]).toEqual([[], [], []]);
  });

  it(`is seen by at most ${MOST_HELPERS}, and never shown to its owner`, () => {
    const { clock, ada, reef, nano } = club();
    const helpers = Array.from({ length: MOST_HELPERS }, (_, index) => `50000000000000000${index}`);
    for (const helper of helpers) ada.showTo(reef, helper);
    expect(() => ada.showTo(reef, BEA)).toThrow(Problem);
    expect(ada.showTo(reef, helpers[0] ?? '')).toBeDefined();
    expect(ada.showTo(nano, BEA)).toBeDefined();
    clock.nowMs += SHOWN_MS;
    expect(ada.showTo(reef, BEA)).toBeDefined();
    expect(() => ada.showTo(reef, ADA)).toThrow(Problem);
    expect(() => ada.showTo(reef, 'nobody')).toThrow('a person is a Discord id');
  });
});

describe('a helper of whom nothing else is kept', () => {
  it('is forgotten when it is taken back, removed, erased', () => {
    const { store, ada, reef, nano } = club();
    for (const end of [() => ada.hideFrom(reef, DAN), () => ada.removeTank(reef)]) {
      ada.showTo(reef, DAN);
      expect(store.personCount()).toBe(2);
      end();
      expect(store.personCount()).toBe(1);
    }
    ada.showTo(nano, DAN);
    ada.eraseAll();
    expect(store.personCount()).toBe(0);
  });

  it('is forgotten soon after it is over, and not before', async () => {
    const { clock, store, ada, reef } = club();
    ada.showTo(reef, DAN);
    clock.nowMs += SHOWN_MS - 1;
    await store.upkeep(clock.nowMs);
    expect(store.personCount()).toBe(2);
    clock.nowMs += 1;
    await store.upkeep(clock.nowMs);
    expect(store.personCount()).toBe(1);
  });

  it('is kept while another tank is shown to them', () => {
    const { store, ada, reef, nano } = club();
    for (const id of [reef, nano]) ada.showTo(id, DAN);
    ada.removeTank(reef);
    expect(store.personCount()).toBe(2);
    expect(store.keepFor(DAN).shownToMe()).toHaveLength(1);
  });
});

describe('the copy of a member', () => {
  it('tells of both roles, without the id of the other and without their tank', () => {
    const { ada, bea, reef } = club();
    ada.showTo(reef, BEA);
    const until = '2026-03-15T09:30:00.000Z';
    expect(ada.exportAll()).toMatchObject({ shownTanks: [{ as: 'owner', tankId: reef, until }] });
    expect(bea.exportAll()).toMatchObject({ shownTanks: [{ as: 'helper', tankId: undefined, until }] });
    expect(JSON.stringify(ada.exportAll())).not.toContain(BEA);
    expect(JSON.stringify(bea.exportAll())).not.toMatch(new RegExp(`${ADA}|${MARK}`));
  });
});

describe('whatever is shown, taken back and waited for', () => {
  const ids = fc.integer({ min: -1, max: 5 });
  const steps = fc.array(
    fc.oneof(
      fc.record({ do: fc.constant('show'), tank: ids, to: fc.constantFrom(BEA, CYD) }),
      fc.record({ do: fc.constant('hide'), tank: ids, to: fc.constantFrom(BEA, CYD) }),
      fc.record({ do: fc.constant('wait'), ms: fc.integer({ min: 0, max: SHOWN_MS }) }),
    ),
    { maxLength: 20 },
  );

  it('a helper sees a tank exactly while its owner shows it to them, with any id', () => {
    fc.assert(
      fc.property(steps, fc.oneof(ids, fc.double(), fc.maxSafeInteger()), (taken, anyId) => {
        const { clock, store, ada, bea, reef, nano } = club();
        /** What ought to be: tank and helper to the end. */
        const model = new Map<string, number>();
        for (const step of taken) {
          if ('ms' in step) clock.nowMs += step.ms;
          else if (step.do === 'hide') {
            ada.hideFrom(step.tank, step.to);
            model.delete(`${step.tank} ${step.to}`);
          } else if (ada.showTo(step.tank, step.to) !== undefined) {
            expect([reef, nano]).toContain(step.tank);
            model.set(`${step.tank} ${step.to}`, clock.nowMs + SHOWN_MS);
          }
        }
        for (const id of [anyId, reef, nano]) {
          const isShown = (model.get(`${id} ${BEA}`) ?? 0) > clock.nowMs;
          const seen = bea.shownTank(id);
          expect(seen?.tank.id, `tank ${id}`).toBe(isShown ? id : undefined);
          expect(store.keepFor(DAN).shownTank(id)).toBeUndefined();
        }
        store.close();
      }),
      { numRuns: 200 },
    );
  });
});
