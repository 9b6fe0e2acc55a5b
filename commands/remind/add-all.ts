import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import type { OwnContext } from '../command.ts';
import type { Plan } from '../reminder.ts';
import { keepOf } from '../tank/asked-tank.ts';
import { firstTimes } from './first-times.ts';
import { makeRoom, sameAs, startedOr } from './set.ts';
import { named, ruleWords } from './times.ts';
import { say } from '../../core/wording/say.ts';

/** Sets several, all or none; those that are set already stay as they are. */
export function addAll(plans: readonly Plan[], context: OwnContext, read: readonly string[]): Answer {
  const keep = keepOf(context);
  const { nowMs } = context;
  const before = keep.reminders();
  const fresh = plans.filter((plan) => sameAs(plan, before) === undefined);
  const progress = fresh.map((plan) => [plan, startedOr(plan, nowMs)] as const);
  makeRoom(keep, fresh.length, nowMs);
  const made = keep.addReminders(progress);
  const count = made.length === 1 ? 'One reminder is' : `${made.length} reminders are`;
  return answer({
    headline: made.length === 0 ? 'All of that is set already.' : `${count} set.`,
    read:
      made.length === plans.length
        ? read
        : [...read, `${plans.length - made.length} set already, left as it is`],
    isList: true,
    facts: made.map((one) => {
      const [first] = firstTimes(one, nowMs);
      return { ...first, label: named(one), value: `${ruleWords(one)}, first ${first?.value ?? ''}` };
    }),
    steps: ['Change one with /remind change, leave one out with /remind remove.'],
    next: [action(say('remind.myReminders'), 'remind list', {})],
  });
}
