import { z } from 'zod';
import { sayInstant } from '../../core/schedule/say.ts';
import { answer, type Answer, type Fact } from '../answer.ts';
import { action } from '../calls.ts';
import { defineCommand } from '../command.ts';
import type { Keep } from '../keep.ts';
import type { HandOver, Reminder } from '../reminder.ts';
import { keepOf } from '../tank/asked-tank.ts';
import { knownZone } from '../zone.ts';
import { named, ruleWords } from './times.ts';
import { dueOf, isPaused, wakeOf } from './wake.ts';
import { say } from '../../core/wording/say.ts';

export const listCommand = defineCommand({
  path: ['remind', 'list'],
  summary: 'Your reminders: what, how often, when next',
  example: '/remind list',
  private: true,
  options: z.strictObject({}),
  run: (_, context): Answer => {
    const keep = keepOf(context);
    const { nowMs } = context;
    const all = [...keep.reminders()].sort((a, b) => (wakeOf(a) ?? Infinity) - (wakeOf(b) ?? Infinity));
    const zone = knownZone(context) ?? 'UTC';
    const handOvers = keep.handOvers().filter(({ state }) => state === 'asked' || state === 'accepted');
    return answer({
      headline: headline(all, nowMs),
      isList: true,
      facts: [
        ...all.map((one) => reminderFact(one, keep, nowMs)),
        ...handOvers.flatMap((one) => handOverFacts(one, zone)),
      ],
      steps:
        all.length === 0
          ? ['Set one: /remind test of:alkalinity when:every saturday 9am, or the usual tests: /remind plan.']
          : [],
      instants: handOvers.flatMap(({ fromMs, untilMs }) => [fromMs, untilMs].map((atMs) => ({ atMs, zone }))),
      next: [
        ...(all.length === 0 ? [action(say('remind.usualTests'), 'remind plan', {})] : []),
        ...(all.length > 0 ? [action(say('remind.asCalendarFile'), 'remind calendar', {})] : []),
        ...handOvers.map(({ id }) =>
          action(say('remind.endHandOver', { id }), 'remind sit', { 'hand-over': String(id), answer: 'no' }),
        ),
      ],
    });
  },
});

function headline(all: readonly Reminder[], nowMs: number): string {
  if (all.length === 0) return 'You have no reminders.';
  const [first] = all;
  const count = all.length === 1 ? 'One reminder' : `${all.length} reminders`;
  const nextMs = first === undefined ? undefined : wakeOf(first);
  if (first === undefined || nextMs === undefined) return `${count}; none of them is due.`;
  const when = nextMs <= nowMs ? 'now' : sayInstant(nextMs, first.zone);
  return `${count}. Next: ${first.text}, ${when}.`;
}

function reminderFact(reminder: Reminder, keep: Keep, nowMs: number): Fact {
  const tank = keep.tanks().find(({ id }) => id === reminder.tankId);
  const tankWords = tank === undefined || reminder.text.includes(tank.name) ? '' : ` (${tank.name})`;
  const place = reminder.place.kind === 'channel' ? { channelId: reminder.place.channelId } : {};
  return {
    label: `${named(reminder)}${tankWords}`,
    value: `${ruleWords(reminder)}; ${stateWords(reminder, nowMs)}`,
    ...wakes(reminder),
    ...place,
  };
}

/** The moment that `stateWords` tells of. */
export function wakes(reminder: Reminder): Pick<Fact, 'instant'> {
  const atMs = wakeOf(reminder);
  return atMs === undefined ? {} : { instant: { atMs, zone: reminder.zone } };
}

/** What is to come of it: "next Saturday 2026-01-10 09:00", "paused", "over". */
export function stateWords(reminder: Reminder, nowMs: number): string {
  const { zone, pause, trouble, rule } = reminder;
  if (trouble !== undefined) return `stopped. ${trouble} /remind resume starts it again`;
  const dueMs = dueOf(reminder);
  const wakeMs = wakeOf(reminder);
  if (pause !== undefined && isPaused(pause, nowMs) && wakeMs === undefined && dueMs !== undefined)
    return 'paused';
  if (wakeMs === undefined) return rule.every === 'after' ? 'waits until you say it is done' : 'over';
  const again = dueMs === reminder.againMs ? 'again ' : 'next ';
  const quiet = pause !== undefined && isPaused(pause, nowMs) ? 'paused; then ' : '';
  return `${quiet}${again}${sayInstant(wakeMs, zone)}`;
}

function handOverFacts({ id, sitterId, fromMs, untilMs, state }: HandOver, zone: string): readonly Fact[] {
  const span = `${sayInstant(fromMs, zone)} to ${sayInstant(untilMs, zone)}`;
  return [{ label: `Hand-over ${id}`, value: `${span}, ${state}; the sitter:`, personId: sitterId }];
}
