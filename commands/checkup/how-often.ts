import { testPlan, type TestHabit } from '../../core/care/test-plan.ts';
import { parameter } from '../../core/water/parameter.ts';
import { say } from '../../core/wording/say.ts';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import type { OwnContext } from '../command.ts';
import { kindWords } from '../tank/print.ts';
import { planKind } from './plan.ts';

/** How often to test what, in the tank in use or a mixed reef, and reminders for it. */
export function howOften(context: OwnContext): Answer {
  const tank = context.keep?.tankInUse();
  const kind = planKind(tank, context.nowMs);
  const plan = testPlan(kind);
  const whose = kind === 'new' ? 'a tank in its first months' : kindWords[kind];
  return answer({
    headline: `Not everything every day: ${mostOften(plan)} most often, the rest less (${whose}).`,
    read: [tank === undefined ? `a ${whose}, grown in` : `your tank ${tank.name}, ${whose}`],
    isList: true,
    facts: plan.map(({ parameter: id, often }) => ({ label: parameter(id).label, value: often })),
    steps: [
      'Test more often for a while after a change of dosing, after new corals, and when you move to a new kit.',
      'Test alkalinity at the same hour each time: what the tank uses in a day shows only so.',
      say('checkup.remindPlan'),
    ],
    cautions: ['All of it is habit, common practice without a source; keepers differ.'],
    sources: ['practice'],
    next: [action(say('checkup.remindersForThese'), 'remind plan', {})],
  });
}

function stepOf({ remind }: TestHabit): number {
  return typeof remind === 'object' ? Infinity : remind;
}

/** "salinity and ammonia": what has the shortest step. */
function mostOften(plan: readonly TestHabit[]): string {
  const shortest = Math.min(...plan.map(stepOf));
  return plan
    .filter((habit) => stepOf(habit) === shortest)
    .map(({ parameter: id }) => parameter(id).label)
    .join(' and ');
}
