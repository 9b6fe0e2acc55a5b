import { assert, constantFrom, integer, property } from 'fast-check';
import { describe, expect, it } from 'vitest';
import { onClock } from '../../../commands/remind/on-clock.ts';
import { settled, started } from '../../../commands/remind/progress.ts';
import type { Plan, Reminder } from '../../../commands/reminder.ts';
import { latestUpTo } from '../../../core/schedule/repeat.ts';
import type { Rule } from '../../../core/schedule/rule.ts';
import { localTime } from '../../../core/words/when.ts';
import { club } from './person.ts';

function moved() {
  const made = club({});
  const { owner } = made;
  owner.run('/remind task text:floss when:every saturday 8pm zone:Europe/Berlin');
  owner.run('/remind task text:glass when:every sunday 8pm');
  owner.run('/tank new name:Far volume:100 L zone:Asia/Tokyo');
  owner.run('/remind task text:feed when:daily 9am');
  return { ...made, before: JSON.stringify(owner.keep.reminders()) };
}

describe('a changed zone', () => {
  it('asks what becomes of the reminders, and moves none before it is answered', () => {
    const { owner, before } = moved();
    const asked = owner.run('/zone zone:America/Chicago');
    expect(asked.tone).toBe('question');
    expect(asked.headline).toMatch(
      /America\/Chicago now\. 2 reminders are set by the clock of Europe\/Berlin/,
    );
    expect(asked.steps).toEqual(['Nothing is moved yet.']);
    expect(JSON.stringify(owner.keep.reminders())).toBe(before);
    expect(owner.keep.zone()).toBe('America/Chicago');
  });

  it('keeps the hour of all of them, but of tanks with a clock of their own', () => {
    const { owner } = moved();
    owner.press(owner.run('/zone zone:America/Chicago').next[0]);
    const all = owner.keep
      .reminders()
      .map(({ zone, nextMs = 0 }) => [zone, localTime(nextMs, zone).slice(11)]);
    expect(all).toEqual([
      ['America/Chicago', '20:00'],
      ['America/Chicago', '20:00'],
      ['Asia/Tokyo', '09:00'],
    ]);
  });

  it('leaves all as they are, where that is wanted', () => {
    const { owner, before } = moved();
    const left = owner.press(owner.run('/zone zone:America/Chicago').next[1]);
    expect(left.headline).toContain('2 reminders stay as they were set, by the clock of Europe/Berlin');
    expect(JSON.stringify(owner.keep.reminders())).toBe(before);
  });

  it('by the way of another command offers the same', () => {
    const { owner } = moved();
    owner.run('/tank edit zone:mine');
    const set = owner.run('/remind task text:carbon when:mondays 9am zone:America/Chicago');
    expect(set.read.join()).toContain('your other 3 reminders stay as set');
    expect(owner.press(set.next[0]).tone).toBe('question');
  });

  it('moves a paused one, which stays paused', () => {
    const { owner } = moved();
    owner.run('/remind pause reminder:1');
    owner.run('/zone zone:America/Chicago move:same hour');
    const [paused] = owner.keep.reminders();
    expect(paused?.zone).toBe('America/Chicago');
    expect(paused?.pause).toBeDefined();
  });

  it('is shown, with a form for another', () => {
    const { owner } = moved();
    const shown = owner.run('/zone');
    expect(shown.headline).toBe('Your time zone is Europe/Berlin.');
    expect(shown.next[0]).toMatchObject({ command: 'zone', ask: ['zone'] });
  });
});

const HOUR_MS = 3_600_000;
const ZONES = [
  'Europe/Berlin',
  'America/Chicago',
  'Asia/Tokyo',
  'Australia/Sydney',
  'America/Sao_Paulo',
  'UTC',
] as const;
const RULES: readonly Rule[] = [
  { every: 'days', count: 1 },
  { every: 'days', count: 3 },
  { every: 'weeks', count: 1, on: [1, 6] },
  { every: 'months', count: 1, on: 31 },
  { every: 'hours', count: 12 },
];

/** Places in the order of the plan that are sent over a year in which the clock is another from some moment on. */
function sentOver(plan: Plan, to: string, startMs: number, hours: number): readonly number[] {
  let reminder: Reminder = { id: 1, ...plan, ...started(plan, startMs) };
  let isMoved = false;
  const sent: number[] = [];
  for (let nowMs = startMs; nowMs < startMs + 120 * 24 * HOUR_MS; nowMs += HOUR_MS) {
    if (!isMoved && nowMs >= startMs + hours * HOUR_MS) {
      const { plan: after, progress } = onClock(reminder, to);
      reminder = { id: 1, ...after, ...progress };
      isMoved = true;
    }
    const { nextMs = Infinity, anchor, zone, rule } = reminder;
    if (nextMs > nowMs) continue;
    sent.push(latestUpTo(anchor, zone, rule, nextMs)?.index ?? -1);
    reminder = { ...reminder, ...settled(reminder, nextMs, nowMs) };
  }
  return sent;
}

describe('on another clock', () => {
  it('nothing is sent twice and nothing left out, over both changes of the clocks', () => {
    assert(
      property(
        constantFrom(...ZONES),
        constantFrom(...ZONES),
        constantFrom(...RULES),
        constantFrom(Date.UTC(2026, 1, 20), Date.UTC(2026, 8, 10)),
        integer({ min: 0, max: 60 * 24 }),
        (from, to, rule, startMs, hours) => {
          const anchor = `${localTime(startMs, from).slice(0, 10)} 20:00`;
          const plan: Plan = {
            text: 'x',
            parameters: [],
            anchor,
            zone: from,
            rule,
            place: { kind: 'direct' },
          };
          const sent = sentOver(plan, to, startMs, hours);
          expect(new Set(sent).size).toBe(sent.length);
          // One late message stands for all that was missed: twelve-hourly ones can be passed over on the way east.
          const most = rule.every === 'hours' ? 2 : 1;
          sent.slice(1).forEach((index, at) => expect(index - (sent[at] ?? 0)).toBeLessThanOrEqual(most));
          sent.slice(1).forEach((index, at) => expect(index - (sent[at] ?? 0)).toBeGreaterThan(0));
          expect(sent.length).toBeGreaterThan(2);
        },
      ),
      { numRuns: 60 },
    );
  });
});
