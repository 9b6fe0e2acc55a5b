import { latestUpTo, occurrence } from '../../core/schedule/repeat.ts';
import type { Plan, Progress, Reminder } from '../reminder.ts';
import { anchorMs, isSingle } from './progress.ts';
import { progressOf } from './moves.ts';

/**
 * A reminder by the clock of another zone, each of its times at the hour it had: 20:00 stays 20:00. The occurrence that
 * comes next is the same one (the same place in the order), so that none is sent twice and none is left out; where its
 * hour has passed on the new clock it comes at once. What was put off stays at its moment, as a pause does.
 */
export function onClock(
  reminder: Reminder,
  zone: string,
): { readonly plan: Plan; readonly progress: Progress } {
  const { text, parameters, tankId, anchor, rule, times, place } = reminder;
  const plan = { text, parameters, tankId, anchor, zone, rule, times, place };
  return { plan, progress: { ...progressOf(reminder), nextMs: nextOn(reminder, plan) } };
}

function nextOn(reminder: Reminder, plan: Plan): number | undefined {
  const { nextMs, anchor, zone, rule } = reminder;
  if (nextMs === undefined) return undefined;
  if (isSingle(reminder)) return anchorMs(plan);
  const index = latestUpTo(anchor, zone, rule, nextMs)?.index ?? 0;
  return occurrence(anchor, plan.zone, rule, index);
}
