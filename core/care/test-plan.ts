import type { Rule, Weekday } from '../schedule/rule.ts';
import type { ParameterId } from '../water/parameter.ts';
import type { TankKind } from '../water/targets.ts';

/** How often one parameter is tested, and what a reminder makes of it. */
export interface TestHabit {
  readonly parameter: ParameterId;
  readonly often: string;
  /** Days from one test to the next, 3.5 for twice a week; or why there is no reminder of it. */
  readonly remind: Days | { readonly not: string };
}

type Days = 1 | 2 | 3.5 | 7 | 14 | 28;

/** A tank in its first months is tested by a plan of its own, whatever is kept in it. */
export type TestPlanKind = TankKind | 'new';

type Habit = Pick<TestHabit, 'often' | 'remind'>;
type Plan = Readonly<Partial<Record<ParameterId, Habit>>>;

/** What is printed, and beside it the one rule a reminder keeps: within "1 to 2 weeks" it is 2. */
function habit(often: string, remind: TestHabit['remind']): Habit {
  return { often, remind };
}

const ONLY_IN_TROUBLE = habit('only after a death, with new stock or when something looks wrong', {
  not: 'it is tested only in trouble',
});
const A_LOOK = { not: 'a look at the thermometer needs no reminder; an alarm is better' };
const OPTIONAL_PH = habit('optional', { not: 'it is optional' });
const LATER = { not: 'it begins once corals are in' };

const established: Plan = {
  temperature: habit('a look every day', A_LOOK),
  salinity: habit('weekly, and after any trouble with the top-off', 7),
  ammonia: ONLY_IN_TROUBLE,
  nitrite: ONLY_IN_TROUBLE,
  ph: OPTIONAL_PH,
};

/** All of it is habit: common practice, no source. Keepers differ. */
const plans: Readonly<Record<TestPlanKind, Plan>> = {
  new: {
    temperature: habit('a look twice a day', A_LOOK),
    salinity: habit('daily', 1),
    ammonia: habit('daily until it has read none for a week', 1),
    nitrite: habit('every 2 to 3 days until it reads none', 2),
    alkalinity: habit('weekly once corals are in', LATER),
    calcium: habit('every 2 weeks once corals are in', LATER),
    magnesium: habit('monthly once corals are in', LATER),
    nitrate: habit('weekly; not to be trusted while nitrite reads anything', 7),
    phosphate: habit('weekly', 7),
    ph: OPTIONAL_PH,
  },
  soft: {
    ...established,
    alkalinity: habit('every 1 to 2 weeks', 14),
    calcium: habit('monthly', 28),
    magnesium: habit('monthly or less', 28),
    nitrate: habit('every 2 to 4 weeks', 28),
    phosphate: habit('every 2 to 4 weeks', 28),
  },
  'large-polyp': {
    ...established,
    alkalinity: habit('1 to 2 times a week', 7),
    calcium: habit('every 1 to 2 weeks', 14),
    magnesium: habit('every 2 to 4 weeks', 28),
    nitrate: habit('every 1 to 2 weeks', 14),
    phosphate: habit('every 1 to 2 weeks', 14),
  },
  'small-polyp': {
    ...established,
    temperature: habit('a look every day, and an alarm', A_LOOK),
    alkalinity: habit('every 1 to 3 days, daily while the dosing is being set', 2),
    calcium: habit('weekly', 7),
    magnesium: habit('every 2 to 4 weeks', 28),
    nitrate: habit('weekly', 7),
    phosphate: habit('weekly', 7),
    ph: habit('optional; a probe that runs all day is useful', OPTIONAL_PH.remind),
  },
  mixed: {
    ...established,
    alkalinity: habit('twice a week until its daily use is known, then weekly, at the same hour', 3.5),
    calcium: habit('every 1 to 2 weeks', 14),
    magnesium: habit('monthly', 28),
    nitrate: habit('weekly', 7),
    phosphate: habit('weekly', 7),
  },
  fish: {
    ...established,
    alkalinity: habit('monthly', 28),
    nitrate: habit('every 2 weeks', 14),
    phosphate: habit('monthly or less', 28),
  },
};

const ORDER: readonly ParameterId[] = [
  'temperature',
  'salinity',
  'alkalinity',
  'calcium',
  'magnesium',
  'nitrate',
  'phosphate',
  'ph',
  'ammonia',
  'nitrite',
];

/** How often to test what, in the order of a test day: common practice, no source. */
export function testPlan(kind: TestPlanKind): readonly TestHabit[] {
  const plan = plans[kind];
  return ORDER.flatMap((id) => {
    const found = plan[id];
    return found === undefined ? [] : [{ parameter: id, ...found }];
  });
}

/** The rule of so many days between tests: weeks keep the weekday of the test day, twice a week is three days on. */
export function testRule(days: Days, testDay: Weekday): Rule {
  if (days < 3.5) return { every: 'days', count: days };
  const second = (((testDay + 2) % 7) + 1) as Weekday;
  const on = days === 3.5 ? ([testDay, second].sort() as Weekday[]) : [testDay];
  return { every: 'weeks', count: Math.max(1, days / 7), on };
}

/** Days since it was filled in which a tank is tested as a new one: common practice, no source. */
export const NEW_TANK_DAYS = 90;
