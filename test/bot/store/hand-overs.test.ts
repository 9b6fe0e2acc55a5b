import { describe, expect, it } from 'vitest';
import type { HandOverNews } from '../../../bot/clock/due.ts';
import { MOST_HAND_OVERS, type NewHandOver } from '../../../commands/reminder.ts';
import { problemOf } from '../../commands/text.ts';
import { ADA, atHour, BEA, CYD, handClock, NOW_MS, opened, planned, profile } from './place.ts';

const LEASE_MS = 120_000;

/** Ada has a reminder for each of two tanks and one for none, all due; Bea is asked to sit for a day from hour 1. */
function sitting(more: Partial<NewHandOver> = {}) {
  const clock = handClock();
  const store = opened(':memory:', clock.read);
  const [ada, bea] = [store.keepFor(ADA), store.keepFor(BEA)];
  const [reef, nano] = ['Reef', 'Nano'].map((name) => ada.addTank(profile(name)).id);
  const [ofReef, ofNano, ofNone] = [reef, nano, undefined].map(
    (tankId) => ada.addReminder(planned(`of ${tankId}`, { tankId }), { nextMs: NOW_MS }).id,
  );
  const span = { fromMs: atHour(1), untilMs: atHour(25) };
  const { id } = ada.addHandOver({ sitterId: BEA, ...span, ...more });
  const news = (): readonly (readonly [HandOverNews, string, number])[] =>
    store.due
      .claimHandOvers(clock.nowMs, 10, LEASE_MS)
      .map(({ news: told, handOver, attempts }) => [told, handOver.state, attempts]);
  const told = (of: HandOverNews, notice?: string): void => store.due.settleHandOver(id, of, notice);
  const ids = [ofReef ?? 0, ofNano ?? 0, ofNone ?? 0] as const;
  return { clock, store, ada, bea, id, news, told, ids, reef, nano };
}

describe('a hand-over', () => {
  it('is seen by both and by nobody else, newest first', () => {
    const { store, ada, bea, id, reef } = sitting();
    const handOver = {
      id,
      ownerId: ADA,
      sitterId: BEA,
      tankId: undefined,
      fromMs: atHour(1),
      untilMs: atHour(25),
      state: 'asked',
    };
    const later = ada.addHandOver({ sitterId: CYD, tankId: reef, fromMs: atHour(2), untilMs: atHour(3) });
    expect(ada.handOvers()).toEqual([later, handOver]);
    expect(bea.handOvers()).toEqual([handOver]);
    expect(later).toMatchObject({ sitterId: CYD, tankId: reef });
    expect(store.keepFor('400000000000000004').handOvers()).toEqual([]);
  });

  it('is answered once, by the sitter alone, while there is time', () => {
    const { store, clock, ada, bea, id } = sitting();
    expect([ada, store.keepFor(CYD)].map((keep) => keep.answerHandOver(id, true))).toEqual([
      undefined,
      undefined,
    ]);
    expect(bea.answerHandOver(id, true)).toMatchObject({ id, ownerId: ADA, state: 'accepted' });
    expect(bea.answerHandOver(id, false)).toBeUndefined();
    const late = ada.addHandOver({ sitterId: BEA, fromMs: atHour(1), untilMs: atHour(2) });
    clock.nowMs = atHour(2);
    expect(bea.answerHandOver(late.id, true)).toBeUndefined();
    expect(bea.handOvers()[0]?.state).toBe('over');
  });

  it.each(['owner', 'sitter'] as const)('is ended once by the %s and by nobody else', (who) => {
    const { store, ada, bea, id } = sitting();
    bea.answerHandOver(id, true);
    expect(store.keepFor(CYD).endHandOver(id)).toBe(false);
    const keep = who === 'owner' ? ada : bea;
    expect([keep.endHandOver(id), keep.endHandOver(id), ada.handOvers()[0]?.state]).toEqual([
      true,
      false,
      'over',
    ]);
  });

  it('is refused where it makes no sense', () => {
    const { ada, store } = sitting();
    const theirs = store.keepFor(BEA).addTank(profile('Beas')).id;
    const fields = [
      { sitterId: ADA },
      { untilMs: atHour(1) },
      { fromMs: atHour(-5), untilMs: NOW_MS },
      { tankId: theirs },
      { tankId: 999 },
    ].map(
      (wrong) =>
        problemOf(() => ada.addHandOver({ sitterId: CYD, fromMs: atHour(1), untilMs: atHour(2), ...wrong }))
          .field,
    );
    expect(fields).toEqual(['sitter', 'until', 'until', 'tank', 'tank']);
    expect(() => ada.addHandOver({ sitterId: 'bea', fromMs: atHour(1), untilMs: atHour(2) })).toThrow(
      'Discord id',
    );
    expect(store.keepFor(CYD).exportAll(), 'nothing is left of someone asked in vain').toMatchObject({
      keptSince: undefined,
    });
  });

  it('is refused beyond what may be open, and those that are over do not count', () => {
    const { clock, ada } = sitting();
    const another = (): unknown =>
      ada.addHandOver({ sitterId: CYD, fromMs: clock.nowMs, untilMs: atHour(99) });
    for (let i = 1; i < MOST_HAND_OVERS; i++) another();
    expect(problemOf(another).limit).toBe(`at most ${MOST_HAND_OVERS}`);
    clock.nowMs = atHour(25);
    another();
  });
});

describe('the sitter', () => {
  it('reaches the reminders from the beginning to the end of what was accepted, never else', () => {
    const { clock, bea, id, ids } = sitting();
    const reached = (): boolean[] => ids.map((reminder) => bea.reminder(reminder) !== undefined);
    const nothing = [false, false, false];
    clock.nowMs = atHour(2);
    expect(reached(), 'not accepted').toEqual(nothing);
    bea.answerHandOver(id, true);
    const at = [atHour(1) - 1, atHour(1), atHour(25) - 1, atHour(25)].map((nowMs) => {
      clock.nowMs = nowMs;
      return reached();
    });
    expect(at).toEqual([nothing, [true, true, true], [true, true, true], nothing]);
    clock.nowMs = atHour(2);
    bea.endHandOver(id);
    expect(reached(), 'ended').toEqual(nothing);
  });

  it('reaches only those of the tank, where one was handed over', () => {
    const { clock, ada, bea, nano, reef, ids } = sitting();
    clock.nowMs = atHour(2);
    for (const tankId of [nano, reef])
      ada.addHandOver({
        sitterId: tankId === nano ? BEA : CYD,
        tankId,
        fromMs: atHour(1),
        untilMs: atHour(9),
      });
    bea.answerHandOver(2, true);
    expect(ids.map((id) => bea.reminder(id)?.mine)).toEqual([undefined, false, undefined]);
  });

  it('moves them, and neither changes nor removes them', () => {
    const { clock, ada, bea, id, ids } = sitting();
    bea.answerHandOver(id, true);
    clock.nowMs = atHour(2);
    const [first] = ids;
    const moved = bea.moveReminder(first, '2026-03-15 09:00', { nextMs: atHour(24), lastDoneMs: atHour(2) });
    expect(moved).toMatchObject({ anchor: '2026-03-15 09:00', nextMs: atHour(24) });
    expect(ada.reminder(first)).toEqual({ reminder: moved, mine: true });
    expect(bea.reminder(first)).toEqual({ reminder: moved, mine: false });
    expect([bea.changeReminder(first, planned('mine now'), {}), bea.removeReminder(first)]).toEqual([
      undefined,
      false,
    ]);
    expect([bea.reminders(), ada.reminders().length]).toEqual([[], 3]);
    clock.nowMs = atHour(25);
    expect(bea.moveReminder(first, '2026-03-16 09:00', {})).toBeUndefined();
  });
});

describe('a due reminder', () => {
  it('carries the hand-over it falls under, one of its tank before one of all', () => {
    const { clock, store, ada, bea, id, reef } = sitting();
    bea.answerHandOver(id, true);
    const one = ada.addHandOver({ sitterId: CYD, tankId: reef, fromMs: atHour(1), untilMs: atHour(2) });
    const sitters = (hour: number): unknown[] => {
      clock.nowMs = atHour(hour);
      return store.due
        .claim(clock.nowMs, 9, 1)
        .map(({ handOver, ownerId }) => [handOver?.sitterId, ownerId === ADA]);
    };
    const mine = [undefined, true];
    const beas = [BEA, true];
    expect(sitters(0)).toEqual([mine, mine, mine]);
    expect(sitters(1), 'not accepted').toEqual([beas, beas, beas]);
    store.keepFor(CYD).answerHandOver(one.id, true);
    expect(sitters(1.5)).toEqual([[CYD, true], beas, beas]);
    expect(sitters(2)).toEqual([beas, beas, beas]);
    expect(sitters(25)).toEqual([mine, mine, mine]);
  });
});

describe('news of a hand-over', () => {
  it('is the question, the answer and the end, each once', () => {
    const { clock, news, told, bea, ada, id } = sitting();
    expect([news(), news()]).toEqual([[['ask the sitter', 'asked', 0]], []]);
    told('ask the sitter');
    bea.answerHandOver(id, true);
    expect(news()).toEqual([['accepted', 'accepted', 0]]);
    told('accepted');
    clock.nowMs = atHour(25) - 1;
    expect(news()).toEqual([]);
    clock.nowMs = atHour(25);
    expect(news()).toEqual([['ended', 'over', 0]]);
    told('ended');
    expect([news(), ada.handOvers(), bea.handOvers()]).toEqual([[], [], []]);
  });

  it('is given back when the lease is over, and put off when asked', () => {
    const { clock, news, store, id } = sitting();
    news();
    clock.nowMs += LEASE_MS;
    expect(news()).toEqual([['ask the sitter', 'asked', 1]]);
    store.due.putOffHandOver(id, atHour(1));
    expect(news()).toEqual([]);
    clock.nowMs = atHour(1);
    expect(news()).toEqual([['ask the sitter', 'asked', 2]]);
  });

  it('is not settled or put off by what was told before the sitter answered', () => {
    const { news, told, bea, store, id } = sitting();
    news();
    bea.answerHandOver(id, true);
    told('ask the sitter', 'could not be reached');
    store.due.putOffHandOver(id, atHour(9));
    expect(news()).toEqual([['accepted', 'accepted', 0]]);
  });

  it('is that it was declined, and then nothing is left, not even the sitter', () => {
    const { news, told, bea, ada, store, id } = sitting();
    news();
    told('ask the sitter');
    bea.answerHandOver(id, false);
    expect(ada.handOvers()[0]?.state).toBe('declined');
    expect(news()).toEqual([['declined', 'declined', 0]]);
    expect(store.personCount()).toBe(2);
    told('declined');
    expect([ada.handOvers(), store.personCount()]).toEqual([[], 1]);
  });

  it('is the end at once when it is ended early', () => {
    const { news, told, bea, ada, id } = sitting();
    bea.answerHandOver(id, true);
    news();
    told('accepted');
    ada.endHandOver(id);
    expect(news()).toEqual([['ended', 'over', 0]]);
  });

  it('is the end when nobody answered in time, or the bot was away', () => {
    const { clock, news } = sitting();
    clock.nowMs = atHour(30);
    expect(news()).toEqual([['ended', 'over', 0]]);
    clock.nowMs += LEASE_MS;
    expect(news()).toEqual([['ended', 'over', 1]]);
  });

  it('is nothing when it is ended before the sitter was asked', () => {
    const { news, ada, store, id } = sitting();
    expect(ada.endHandOver(id)).toBe(true);
    expect([news(), ada.handOvers(), store.personCount()]).toEqual([[], [], 1]);
  });

  it('that cannot reach the sitter ends it with a notice to the owner', () => {
    const { news, told, ada, bea, store } = sitting();
    news();
    told('ask the sitter', 'I cannot write to your sitter.');
    expect([ada.handOvers(), bea.handOvers(), store.personCount()]).toEqual([[], [], 1]);
    expect(ada.takeNotices()).toEqual(['I cannot write to your sitter.']);
  });
});

describe('when someone or a tank goes', () => {
  it('the owner gets the reminders back and is told, if the sitter is erased', () => {
    const { clock, store, ada, bea, id } = sitting();
    bea.answerHandOver(id, true);
    clock.nowMs = atHour(2);
    bea.eraseAll();
    expect([ada.handOvers(), store.personCount()]).toEqual([[], 1]);
    expect(store.due.claim(clock.nowMs, 9, 1).map(({ handOver }) => handOver)).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
    expect(ada.takeNotices()).toEqual([expect.stringContaining('your reminders come to you again')]);
  });

  it('the sitter goes with the owner if nothing else is kept, and is told if there is', () => {
    const { ada, bea, store, id } = sitting();
    const { id: other } = ada.addHandOver({ sitterId: CYD, fromMs: atHour(1), untilMs: atHour(25) });
    for (const [keep, handOver] of [
      [bea, id],
      [store.keepFor(CYD), other],
    ] as const)
      keep.answerHandOver(handOver, true);
    bea.setZone('Asia/Tokyo');
    ada.eraseAll();
    expect(store.personCount()).toBe(1);
    expect(bea.handOvers()).toEqual([]);
    expect(bea.takeNotices()).toEqual([expect.stringContaining('you were the sitter')]);
    expect(bea.zone()).toBe('Asia/Tokyo');
  });

  it('the hand-over of a tank goes with the tank, one of all tanks stays', () => {
    const { ada, store, id, reef } = sitting();
    const cyd = store.keepFor(CYD);
    cyd.setZone('Asia/Tokyo');
    const one = ada.addHandOver({ sitterId: CYD, tankId: reef, fromMs: atHour(1), untilMs: atHour(25) });
    cyd.answerHandOver(one.id, true);
    ada.removeTank(reef ?? 0);
    expect(ada.handOvers().map((handOver) => handOver.id)).toEqual([id]);
    expect(cyd.takeNotices()).toEqual([expect.stringContaining('removed the tank')]);
  });
});
