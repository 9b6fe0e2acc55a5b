import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Keep } from '../../../commands/keep.ts';
import { Problem } from '../../../core/problem.ts';
import type { Store } from '../../../bot/store/open.ts';
import {
  ADA,
  addition,
  alkalinity,
  BEA,
  CYD,
  DAY_MS,
  NOW_MS,
  opened,
  placing,
  planned,
  profile,
  SPOT,
} from './place.ts';

const due = { nextMs: NOW_MS };
const point = { spot: SPOT, ppfd: 100, atMs: NOW_MS };
const span = { fromMs: NOW_MS, untilMs: NOW_MS + DAY_MS };

/** Everything a member can do, with any two ids. */
const actions: Readonly<Record<string, (keep: Keep, tankId: number, id: number) => unknown>> = {
  tanks: (keep) => keep.tanks(),
  tankInUse: (keep) => keep.tankInUse(),
  addTank: (keep, tankId) =>
    keep.tanks().length < 5 ? keep.addTank(profile(`made ${tankId} ${keep.tanks().length}`)) : [],
  editTank: (keep, tankId) =>
    keep.tanks().length < 5 ? keep.editTank(tankId, profile(`edited ${tankId}`)) : [],
  useTank: (keep, tankId) => keep.useTank(tankId),
  removeTank: (keep, tankId) => keep.removeTank(tankId),
  addEntry: (keep, tankId) => keep.addEntry(tankId, alkalinity(1)),
  addEntries: (keep, tankId) => keep.addEntries(tankId, [alkalinity(1), alkalinity(2)]),
  lastEntry: (keep, tankId) => keep.lastEntry(tankId),
  removeEntry: (keep, tankId, id) => keep.removeEntry(tankId, id),
  readings: (keep, tankId) => keep.readings(tankId, {}),
  readingsOfOne: (keep, tankId) => keep.readings(tankId, { parameter: 'alkalinity', most: 3 }),
  latest: (keep, tankId) => keep.latest(tankId),
  addAddition: (keep, tankId) => keep.addAddition(tankId, addition(1)),
  removeAddition: (keep, tankId, id) => keep.removeAddition(tankId, id),
  additions: (keep, tankId) => keep.additions(tankId, {}),
  glass: (keep, tankId) => keep.glass(tankId),
  setGlass: (keep, tankId) => keep.setGlass(tankId, { flow: 'front to back' }),
  corals: (keep, tankId) => keep.corals(tankId),
  addCoral: (keep, tankId) => keep.addCoral(tankId, placing({ label: 'made' })),
  changeCoral: (keep, tankId, id) => keep.changeCoral(tankId, id, placing({ label: 'changed' })),
  removeCoral: (keep, tankId, id) => keep.removeCoral(tankId, id),
  lightPoints: (keep, tankId) => keep.lightPoints(tankId),
  addLightPoints: (keep, tankId) => keep.addLightPoints(tankId, [point]),
  removeLightPoint: (keep, tankId, id) => keep.removeLightPoint(tankId, id),
  watches: (keep, tankId) => keep.watches(tankId),
  setWatch: (keep, tankId) => keep.setWatch(tankId, { parameter: 'nitrate', over: 25 }),
  removeWatch: (keep, tankId) => keep.removeWatch(tankId, 'nitrate'),
  units: (keep) => keep.units(),
  setUnits: (keep) => keep.setUnits({ length: 'in' }),
  locale: (keep) => keep.locale(),
  noteLocale: (keep) => keep.noteLocale('pt-BR'),
  zone: (keep) => keep.zone(),
  setZone: (keep) => keep.setZone('Asia/Tokyo'),
  reminders: (keep) => keep.reminders(),
  addReminder: (keep, tankId) => keep.addReminder(planned('made', { tankId }), due),
  addReminders: (keep, tankId) => keep.addReminders([[planned('made', { tankId }), due]]),
  changeReminder: (keep, _, id) => keep.changeReminder(id, planned('changed'), {}),
  removeReminder: (keep, _, id) => keep.removeReminder(id),
  reminder: (keep, _, id) => keep.reminder(id),
  moveReminder: (keep, _, id) => keep.moveReminder(id, '2030-01-01 10:00', {}),
  handOvers: (keep) => keep.handOvers(),
  addHandOver: (keep, tankId) => keep.addHandOver({ sitterId: CYD, tankId, ...span }),
  answerHandOver: (keep, _, id) => keep.answerHandOver(id, true),
  endHandOver: (keep, _, id) => keep.endHandOver(id),
  viewers: (keep, tankId) => keep.viewers(tankId),
  showTo: (keep, tankId) => keep.showTo(tankId, CYD),
  hideFrom: (keep, tankId) => keep.hideFrom(tankId, CYD),
  shownToMe: (keep) => keep.shownToMe(),
  shownTank: (keep, tankId) => keep.shownTank(tankId),
  takeNotices: (keep) => keep.takeNotices(),
  told: (keep) => keep.told(),
  held: (keep) => keep.held(),
  exportAll: (keep) => keep.exportAll(),
  eraseAll: (keep) => keep.eraseAll(),
};

/** Take no id, so there is nothing to tell. */
const noIds =
  /^(units|setUnits|locale|noteLocale|tanks|tankInUse|addTank|zone|setZone|reminders|handOvers|shownToMe|takeNotices|told|held|exportAll|eraseAll)$/;

const MARK = 'Beas-own';

function hold(store: Store, personId: string, mark: string): void {
  store.lastingCases.put(personId, 'said in 1', { moments: [], last: mark });
  store.held.hold({ id: mark, personId, isPrivate: true, kind: 'answer', body: JSON.stringify({ mark }) });
}

/** Bea has data whose ids lie between Ada's. */
function club(): { store: Store; ada: Keep; bea: Keep } {
  const store = opened();
  const [ada, bea] = [store.keepFor(ADA), store.keepFor(BEA)];
  for (const name of ['one', 'two'])
    for (const [keep, mark] of [
      [ada, 'Adas-own'],
      [bea, MARK],
    ] as const) {
      const { id } = keep.addTank(profile(`${mark} ${name}`));
      for (const hours of [0, 1, 2]) keep.addEntry(id, alkalinity(8, hours, mark));
      keep.addAddition(id, { ...addition(1), compound: mark });
      keep.setGlass(id, { flow: 'changing' });
      keep.addCoral(id, placing({ label: mark }));
      keep.addLightPoints(id, [point]);
      keep.setWatch(id, { parameter: 'nitrate', over: 20 });
      keep.addReminder(planned(`${mark} ${name}`, { tankId: id }), due);
      keep.addHandOver({ sitterId: CYD, tankId: id, ...span });
      keep.showTo(id, CYD);
    }
  for (const [id, mark] of [
    [ADA, 'Adas-own'],
    [BEA, MARK],
  ] as const)
    hold(store, id, mark);
  store.keepFor(CYD).answerHandOver(2, true);
  return { store, ada, bea };
}

/** What it answers; a refusal is an answer. */
function tried(work: () => unknown): unknown {
  try {
    return work();
  } catch (error) {
    if (error instanceof Problem) return [error.message, error.field];
    throw error;
  }
}

describe('one member', () => {
  it('has every function of a Keep tried', () => {
    const { ada } = club();
    expect(Object.keys(actions)).toEqual(expect.arrayContaining(Object.keys(ada)));
  });

  it("never sees or changes another's rows, with any ids", () => {
    const anyId = fc.oneof(
      { weight: 6, arbitrary: fc.integer({ min: -1, max: 16 }) },
      fc.maxSafeInteger(),
      fc.double(),
    );
    const anyAction = fc.tuple(fc.constantFrom(...Object.keys(actions)), anyId, anyId);
    fc.assert(
      fc.property(fc.array(anyAction, { minLength: 1, maxLength: 25 }), (taken) => {
        const { store, ada, bea } = club();
        const before = [bea.exportAll(), bea.tankInUse()];
        for (const [name, tankId, id] of taken)
          expect(JSON.stringify(tried(() => actions[name]?.(ada, tankId, id))) ?? '').not.toContain(MARK);
        expect([bea.exportAll(), bea.tankInUse()]).toEqual(before);
        store.close();
      }),
      { numRuns: 300 },
    );
  });

  it.each(Object.keys(actions).filter((name) => !noIds.test(name)))(
    "is told by %s that another's tank does not exist",
    (name) => {
      const { ada, bea } = club();
      const theirs = bea.tanks()[0]?.id ?? expect.unreachable();
      const theirEntry = bea.lastEntry(theirs)?.id ?? expect.unreachable();
      const theirRow = (/HandOver/.test(name) ? bea.handOvers() : bea.reminders())[0]?.id ?? theirEntry;
      const theirPlaced = (/LightPoint/.test(name) ? bea.lightPoints(theirs) : bea.corals(theirs))[0]?.id;
      const id = /Reminder|HandOver|reminder/.test(name)
        ? theirRow
        : /Coral|LightPoint/.test(name)
          ? (theirPlaced ?? expect.unreachable())
          : theirEntry;
      const answers = [
        [theirs, id],
        [999, 999],
      ].map(([tankId = 0, rowId = 0]) => tried(() => actions[name]?.(ada, tankId, rowId)));
      expect(answers[0]).toEqual(answers[1]);
      const own = ada.tanks()[0]?.id ?? expect.unreachable();
      // A watch is named by its parameter, not by an id of a row.
      if (name.startsWith('remove') && name !== 'removeTank' && name !== 'removeWatch')
        expect(actions[name]?.(ada, own, id)).toBe(false);
    },
  );
});
