import { z } from 'zod';
import { testPlan, testRule, type TestHabit } from '../../core/care/test-plan.ts';
import { parameter, type ParameterId } from '../../core/water/parameter.ts';
import { answer, type Answer, type Fact } from '../answer.ts';
import { action } from '../calls.ts';
import { planKind } from '../checkup/plan.ts';
import { defineCommand, type Context } from '../command.ts';
import type { Keep, Tank } from '../keep.ts';
import { textOption } from '../options.ts';
import type { Plan } from '../reminder.ts';
import { keepOf } from '../tank/asked-tank.ts';
import { kindWords } from '../tank/print.ts';
import { askedZone, zoneOption } from '../zone.ts';
import { addAll } from './add-all.ts';
import { askedTestDay, type TestDay } from './asked-test-day.ts';
import { firstTimes } from './first-times.ts';
import { tankLines, tankOf } from './set.ts';
import { tankOption } from './task.ts';
import { testText } from './test.ts';
import { ruleWords } from './times.ts';
import { dueOf } from './wake.ts';
import { say } from '../../core/wording/say.ts';

export const planCommand = defineCommand({
  path: ['remind', 'plan'],
  summary: 'The usual tests as reminders, for your kind of tank; shows them first',
  example: '/remind plan at:sunday 10am',
  private: true,
  options: z.strictObject({
    tank: tankOption,
    zone: zoneOption(),
    at: textOption('Your test day and hour, e.g. sunday 10am; saturday 10:00 if left out', {
      max: 30,
    }).optional(),
    sure: z.enum(['yes']).describe('yes sets them').optional(),
  }),
  run: (input, context): Answer => {
    const keep = keepOf(context);
    const tank = tankOf(context, input.tank);
    const { zone, read } = askedZone(context, input.zone, tank);
    const day = askedTestDay(input.at, context.nowMs, zone);
    const habits = testPlan(planKind(tank, context.nowMs));
    const kept = keptTests(keep, tank);
    const plans = plansOf(habits, kept, tank, zone, day);
    const lines = [kindLine(tank, context), ...tankLines(tank), ...read, ...day.notes];
    if (input.sure === 'yes') return addAll(plans, context, lines);
    const count = plans.length === 1 ? 'one reminder' : `${plans.length} reminders`;
    return answer({
      headline:
        plans.length === 0
          ? 'You are reminded of all the usual tests already.'
          : `The usual tests would be ${count}. Nothing is set yet.`,
      read: [...lines, ...notReminded(habits)],
      isList: true,
      facts: plans.map((plan) => planFact(plan, context.nowMs)),
      table: {
        head: ['Test', 'How often', 'Reminder'],
        rows: habits.map((habit) => [
          parameter(habit.parameter).label,
          habit.often,
          reminderWords(habit, kept),
        ]),
      },
      cautions: [
        'How often is common practice; keepers differ. Test more often after a change of dosing, of kit or of corals.',
      ],
      sources: ['practice'],
      next:
        plans.length === 0
          ? [action(say('remind.myReminders'), 'remind list', {})]
          : [action(say('remind.yesSetThem'), 'remind plan', yesInput(tank, day))],
    });
  },
});

function yesInput(tank: Tank | undefined, { words }: TestDay) {
  return { ...(tank === undefined ? {} : { tank: tank.name }), at: words, sure: 'yes' };
}

/** One reminder for all that is tested in the same rhythm. */
function plansOf(
  habits: readonly TestHabit[],
  kept: ReadonlySet<ParameterId>,
  tank: Tank | undefined,
  zone: string,
  day: TestDay,
): readonly Plan[] {
  const groups = new Map<number, { readonly plan: Plan; readonly parameters: ParameterId[] }>();
  for (const { parameter: id, remind } of habits) {
    if (typeof remind === 'object' || kept.has(id)) continue;
    const parameters = [...(groups.get(remind)?.parameters ?? []), id];
    const rule = testRule(remind, day.weekday);
    const anchor = rule.every === 'days' ? day.firstHour : day.firstDay;
    const plan: Plan = {
      text: testText(parameters),
      parameters,
      tankId: tank?.id,
      anchor,
      zone,
      rule,
      place: { kind: 'direct' },
    };
    groups.set(remind, { plan, parameters });
  }
  return [...groups.entries()].sort(([a], [b]) => a - b).map(([, { plan }]) => plan);
}

/** What this tank has a reminder of already. */
function keptTests(keep: Keep, tank: Tank | undefined): ReadonlySet<ParameterId> {
  const live = keep.reminders().filter((one) => one.tankId === tank?.id && dueOf(one) !== undefined);
  return new Set(live.flatMap(({ parameters }) => parameters));
}

function planFact(plan: Plan, nowMs: number): Fact {
  const [first] = firstTimes(plan, nowMs);
  return { ...first, label: plan.text, value: `${ruleWords(plan)}, first ${first?.value ?? ''}` };
}

function reminderWords({ parameter: id, remind }: TestHabit, kept: ReadonlySet<ParameterId>): string {
  if (kept.has(id)) return 'set already';
  if (typeof remind === 'object') return 'none';
  if (remind === 3.5) return 'twice a week';
  if (remind === 1) return 'every day';
  if (remind < 7) return `every ${remind} days`;
  return remind === 7 ? 'every week' : `every ${remind / 7} weeks`;
}

/** "no reminder of ammonia and nitrite: it is tested only in trouble" */
function notReminded(habits: readonly TestHabit[]): readonly string[] {
  const reasons = new Map<string, string[]>();
  for (const { parameter: id, remind } of habits) {
    if (typeof remind !== 'object') continue;
    reasons.set(remind.not, [...(reasons.get(remind.not) ?? []), parameter(id).label]);
  }
  return [...reasons].map(([why, labels]) => `no reminder of ${labels.join(' and ')}: ${why}`);
}

function kindLine(tank: Tank | undefined, { nowMs }: Context): string {
  const kind = planKind(tank, nowMs);
  if (kind === 'new') return 'the plan of a tank in its first three months; ask again after that';
  return `the plan for ${kindWords[kind]}${tank === undefined ? ', since I know no tank of yours' : ''}`;
}
