import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Store } from '../../../bot/store/open.ts';
import { ADA, NOW_MS, opened, planned } from './place.ts';

const LEASE_MS = 10;
const ANCHOR = planned('').anchor;

/** What a reminder should be, told apart from how the store does it. */
interface Expected {
  dueMs: number;
  wakeMs: number;
  leasedUntilMs: number;
  attempts: number;
}

/** The store beside its model, and everything that was ever claimed: a settle can come late. */
interface World {
  readonly store: Store;
  readonly model: Map<number, Expected>;
  readonly sent: { readonly id: number; readonly dueMs: number }[];
  nowMs: number;
}

type Step = (world: World, which: number, ms: number) => void;

function picked(world: World, which: number) {
  const claim = world.sent[which % Math.max(1, world.sent.length)];
  const expected = claim && world.model.get(claim.id);
  return claim && { ...claim, expected, isCurrent: expected?.dueMs === claim.dueMs };
}

function dueAnew(expected: Expected, dueMs: number): void {
  Object.assign(expected, { dueMs, wakeMs: dueMs, leasedUntilMs: 0, attempts: 0 });
}

const steps: Readonly<Record<string, Step>> = {
  wait: (world, _, ms) => void (world.nowMs += ms),
  clockBack: (world, _, ms) => void (world.nowMs -= ms),
  claim: (world, which) => {
    const most = which % 4;
    const ready = [...world.model]
      .filter(([, { wakeMs, leasedUntilMs }]) => wakeMs <= world.nowMs && leasedUntilMs <= world.nowMs)
      .sort(([a, one], [b, other]) => one.wakeMs - other.wakeMs || a - b)
      .slice(0, most);
    const claimed = world.store.due.claim(world.nowMs, most, LEASE_MS);
    expect(claimed.map(({ reminder, dueMs, attempts }) => [reminder.id, dueMs, attempts])).toEqual(
      ready.map(([id, { dueMs, attempts }]) => [id, dueMs, attempts]),
    );
    for (const [id, expected] of ready) {
      world.sent.push({ id, dueMs: expected.dueMs });
      expected.leasedUntilMs = world.nowMs + LEASE_MS;
      expected.attempts++;
    }
  },
  settle: (world, which, ms) => {
    const claim = picked(world, which);
    if (claim === undefined) return;
    world.store.due.settle(claim.id, claim.dueMs, { nextMs: claim.dueMs + ms + 1 });
    if (claim.expected && claim.isCurrent) dueAnew(claim.expected, claim.dueMs + ms + 1);
  },
  putOff: (world, which, ms) => {
    const claim = picked(world, which);
    if (claim === undefined) return;
    const untilMs = Math.max(world.nowMs + ms, claim.dueMs);
    world.store.due.putOff(claim.id, claim.dueMs, untilMs);
    if (claim.expected && claim.isCurrent && claim.expected.leasedUntilMs > 0)
      Object.assign(claim.expected, { wakeMs: untilMs, leasedUntilMs: 0 });
  },
  move: (world, which, ms) => {
    const id = 1 + (which % 6);
    const expected = world.model.get(id);
    if (expected === undefined) return;
    world.store.keepFor(ADA).moveReminder(id, ANCHOR, { nextMs: expected.dueMs + ms });
    if (ms > 0) dueAnew(expected, expected.dueMs + ms);
    else expected.wakeMs = expected.dueMs;
  },
  remove: (world, which) => {
    const id = 1 + (which % 6);
    expect(world.store.keepFor(ADA).removeReminder(id)).toBe(world.model.delete(id));
  },
};

function opening(): World {
  const store = opened();
  const model: World['model'] = new Map();
  for (let i = 0; i < 6; i++) {
    const dueMs = NOW_MS + ((i * 7) % 5);
    const { id } = store.keepFor(ADA).addReminder(planned(`${i}`), { nextMs: dueMs });
    model.set(id, { dueMs, wakeMs: dueMs, leasedUntilMs: 0, attempts: 0 });
  }
  return { store, model, sent: [], nowMs: NOW_MS };
}

describe('any interleaving of claims, settles, delays, changes and waits', () => {
  const weighted = [
    'claim',
    'claim',
    'claim',
    'settle',
    'settle',
    'putOff',
    'wait',
    'wait',
    'move',
    'clockBack',
    'remove',
  ];
  const step = fc.tuple(fc.constantFrom(...weighted), fc.nat(20), fc.nat(15));

  it('claims exactly what is due and not being sent, in order, and settles each occurrence once', () => {
    fc.assert(
      fc.property(fc.array(step, { minLength: 5, maxLength: 60 }), (taken) => {
        const made = opening();
        for (const [name, which, ms] of taken) steps[name]?.(made, which, ms);
        const kept = made.store.keepFor(ADA).reminders();
        expect(kept.map(({ id, nextMs }) => [id, nextMs])).toEqual(
          [...made.model].map(([id, { dueMs }]) => [id, dueMs]),
        );
        made.store.close();
      }),
      { numRuns: 400 },
    );
  });
});
