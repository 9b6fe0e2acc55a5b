import { sayInstant, sayRule } from '../../core/schedule/say.ts';
import type { Fact } from '../answer.ts';
import type { Plan, Reminder } from '../reminder.ts';

/** A moment as a fact, by the clock of its zone. */
export function timeFact(label: string, atMs: number, zone: string): Fact {
  return { label, value: sayInstant(atMs, zone), instant: { atMs, zone } };
}

/** "every 2 weeks on Saturday at 09:00 (Europe/Berlin), 3 times in all". */
export function ruleWords({ rule, anchor, zone, times }: Plan): string {
  const limit = times === undefined ? '' : `, ${times} ${times === 1 ? 'time' : 'times'} in all`;
  return `${sayRule(rule, anchor)} (${zone})${limit}`;
}

/** "12: change filter floss": how a reminder is named in lists and choices. */
export function named({ id, text }: Reminder): string {
  const whole = `${id}: ${text}`;
  return whole.length <= MOST_CHOICE ? whole : `${whole.slice(0, MOST_CHOICE - 1)}…`;
}

/** Longest value a platform offers while typing. */
const MOST_CHOICE = 100;
