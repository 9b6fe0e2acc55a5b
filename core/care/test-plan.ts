import type { LoggableId } from '../water/loggable.ts';
import type { TankKind } from '../water/targets.ts';

/** How often one parameter is tested. */
export interface TestHabit {
  readonly parameter: LoggableId;
  readonly often: string;
}

/** A tank in its first months is tested by a plan of its own, whatever is kept in it. */
export type TestPlanKind = TankKind | 'new';

type Plan = Readonly<Partial<Record<LoggableId, string>>>;

const ONLY_IN_TROUBLE = 'only after a death, with new stock or when something looks wrong';

const established: Plan = {
  temperature: 'a look every day',
  salinity: 'weekly, and after any trouble with the top-off',
  ammonia: ONLY_IN_TROUBLE,
  nitrite: ONLY_IN_TROUBLE,
  ph: 'optional',
};

/** All of it is habit: common practice, no source. Keepers differ. */
const plans: Readonly<Record<TestPlanKind, Plan>> = {
  new: {
    temperature: 'a look twice a day',
    salinity: 'daily',
    ammonia: 'daily until it has read none for a week',
    nitrite: 'every 2 to 3 days until it reads none',
    alkalinity: 'weekly once corals are in',
    calcium: 'every 2 weeks once corals are in',
    magnesium: 'monthly once corals are in',
    nitrate: 'weekly; not to be trusted while nitrite reads anything',
    phosphate: 'weekly',
    ph: 'optional',
  },
  soft: {
    ...established,
    alkalinity: 'every 1 to 2 weeks',
    calcium: 'monthly',
    magnesium: 'monthly or less',
    nitrate: 'every 2 to 4 weeks',
    phosphate: 'every 2 to 4 weeks',
  },
  'large-polyp': {
    ...established,
    alkalinity: '1 to 2 times a week',
    calcium: 'every 1 to 2 weeks',
    magnesium: 'every 2 to 4 weeks',
    nitrate: 'every 1 to 2 weeks',
    phosphate: 'every 1 to 2 weeks',
  },
  'small-polyp': {
    ...established,
    temperature: 'a look every day, and an alarm',
    alkalinity: 'every 1 to 3 days, daily while the dosing is being set',
    calcium: 'weekly',
    magnesium: 'every 2 to 4 weeks',
    nitrate: 'weekly',
    phosphate: 'weekly',
    ph: 'optional; a probe that runs all day is useful',
  },
  mixed: {
    ...established,
    alkalinity: 'twice a week until its daily use is known, then weekly, at the same hour',
    calcium: 'every 1 to 2 weeks',
    magnesium: 'monthly',
    nitrate: 'weekly',
    phosphate: 'weekly',
  },
  fish: {
    ...established,
    alkalinity: 'monthly',
    nitrate: 'every 2 weeks',
    phosphate: 'monthly or less',
  },
};

const ORDER: readonly LoggableId[] = [
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
    const often = plan[id];
    return often === undefined ? [] : [{ parameter: id, often }];
  });
}

/** Days since it was filled in which a tank is tested as a new one: common practice, no source. */
export const NEW_TANK_DAYS = 90;
