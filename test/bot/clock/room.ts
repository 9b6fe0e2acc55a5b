import { openLoop, type Loop } from '../../../bot/clock/loop.ts';
import type { Letter, Post, Posted } from '../../../bot/clock/post.ts';
import { openLog } from '../../../bot/log.ts';
import { openStore, type Store } from '../../../bot/store/open.ts';
import type { Keep } from '../../../commands/keep.ts';
import type { Plan, Reminder } from '../../../commands/reminder.ts';
import { nextAfter } from '../../../core/schedule/repeat.ts';
import { instantOf } from '../../../core/schedule/zone.ts';
import { profile } from '../discord/members.ts';
import { FakeClock } from './fake-clock.ts';

export const minuteMs = 60_000;
export const hourMs = 60 * minuteMs;
export const dayMs = 24 * hourMs;

export const ownerId = '1100000000000000021';
export const sitterId = '1100000000000000022';
export const zone = 'Europe/Berlin';
export const serverId = '1100000000000000100';
export const channelId = '1100000000000000201';

export interface Sent {
  readonly letter: Letter;
  readonly atMs: number;
}

export type Answering = (letter: Letter, hurry: AbortSignal) => Posted | Promise<Posted>;

/** A loop over the real store, in memory, with a clock that the test moves and a post that writes down what is sent. */
export interface Room {
  readonly clock: FakeClock;
  readonly store: Store;
  readonly keep: Keep;
  /** Letters in the order they were sent. */
  readonly sent: Sent[];
  readonly log: string[];
  /** What becomes of letters from now on. */
  answering: Answering;
  /** Starts a loop, as a process that starts does. */
  readonly begin: () => Loop;
  /** Adds a reminder of the owner that is due first at its first occurrence from now on. */
  readonly remind: (plan?: Partial<Plan>) => Reminder;
}

/** Starts at a local time of the zone. */
export function openRoom(start = '2026-01-05 08:00', keepOf?: (store: Store) => Store['keepFor']): Room {
  const clock = new FakeClock(instantOf(start, zone));
  const store = openStore({ file: ':memory:', nowMs: clock.nowMs });
  const keep = store.keepFor(ownerId);
  const sent: Sent[] = [];
  const log: string[] = [];
  const post: Post = {
    send: async (letter, hurry) => {
      sent.push({ letter, atMs: clock.nowMs() });
      return room.answering(letter, hurry);
    },
  };
  const keepFor = keepOf?.(store) ?? store.keepFor;
  const room: Room = {
    clock,
    store,
    keep,
    sent,
    log,
    answering: () => ({ kind: 'sent' }),
    begin: () => {
      const logger = openLog('debug', { write: (line) => void log.push(line) });
      const loop = openLoop({ due: store.due, keepFor, post, clock, log: logger });
      loop.start();
      return loop;
    },
    remind: (plan = {}) => {
      const whole: Plan = {
        text: 'change filter floss',
        parameters: [],
        anchor: '2026-01-05 09:00',
        zone,
        rule: { every: 'days', count: 1 },
        place: { kind: 'direct' },
        ...plan,
      };
      const next = nextAfter(whole.anchor, whole.zone, whole.rule, clock.nowMs() - 1);
      return keep.addReminder(whole, { nextMs: next?.atMs });
    },
  };
  return room;
}

/** The instant an occurrence was due, from the nonce of its letter. */
export function dueMsOf({ letter }: Sent): number {
  return Number(letter.nonce.split('-')[1]) * 1000;
}

/** Local times of the zone, "2026-01-05 09:00", of what was due. */
export function duesOf(sent: readonly Sent[], inZone = zone): readonly string[] {
  return sent.map((each) => localOf(dueMsOf(each), inZone));
}

/** By the calendar of the language itself, not ours. */
export function localOf(atMs: number, inZone = zone): string {
  const style = { dateStyle: 'short', timeStyle: 'short', timeZone: inZone } as const;
  return new Intl.DateTimeFormat('sv-SE', style).format(atMs);
}

/** A tank of the owner, with a reading. */
export function tankOf(room: Room): number {
  const { id } = room.keep.addTank(profile('hall reef', 250));
  const values = [{ parameter: 'alkalinity', value: 8.1 }] as const;
  room.keep.addEntry(id, { atMs: room.clock.nowMs() - dayMs, values });
  return id;
}
