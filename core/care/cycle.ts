import { parameter } from '../water/parameter.ts';

/** One test of a tank that is cycling, mg/L as a kit shows them. */
export interface CycleTest {
  /** The day as written. */
  readonly when: string;
  readonly ammonia: number;
  readonly nitrite: number;
  readonly nitrate?: number | undefined;
}

/**
 * How far it is. `nothing seen`: neither ever showed; `ammonia` and `nitrite` say what is still there and whether it has
 * passed its peak; `zero once`, `zero held`: both read none on the last, or on the last two tests or more. One test says
 * nothing of rise or fall: `ammonia`, `both` and `nitrite` are what it shows.
 */
export type CycleStage =
  | 'nothing seen'
  | 'ammonia'
  | 'both'
  | 'nitrite'
  | 'ammonia not falling'
  | 'ammonia falling'
  | 'nitrite not falling'
  | 'nitrite falling'
  | 'zero once'
  | 'zero held';

/** Below what a kit shows, "none": common practice. */
const none = (id: 'ammonia' | 'nitrite', value: number): boolean => value < parameter(id).kitResolution;

const bothNone = ({ ammonia, nitrite }: CycleTest): boolean =>
  none('ammonia', ammonia) && none('nitrite', nitrite);

/** The stage after the last of the tests, which are in order of time. Common practice, no source. */
export function cycleStage(tests: readonly [CycleTest, ...CycleTest[]]): CycleStage {
  const last = tests.at(-1) ?? tests[0];
  if (tests.length > 1 && tests.every(bothNone)) return 'nothing seen';
  if (bothNone(last))
    return tests.slice(-2).length === 2 && tests.slice(-2).every(bothNone) ? 'zero held' : 'zero once';
  if (tests.length === 1) return shown(last);
  const peak = (of: 'ammonia' | 'nitrite'): number => Math.max(...tests.map((test) => test[of]));
  if (!none('ammonia', last.ammonia)) {
    return last.ammonia < peak('ammonia') ? 'ammonia falling' : 'ammonia not falling';
  }
  return last.nitrite < peak('nitrite') ? 'nitrite falling' : 'nitrite not falling';
}

function shown({ ammonia, nitrite }: CycleTest): 'ammonia' | 'both' | 'nitrite' {
  if (none('ammonia', ammonia)) return 'nitrite';
  return none('nitrite', nitrite) ? 'ammonia' : 'both';
}

/**
 * Days until a stage is usually over, at 25 to 27 °C and nothing alive in it: common practice, no source. The card "on
 * track" says the same course.
 */
const OVER_BY_DAY = { ammonia: 14, both: 25, nitrite: 42 } as const;

/** Whether what one test shows is usual on its day, or lasts longer than it mostly does. */
export function onItsDay(stage: CycleStage, day: number): 'usual' | 'slow' | undefined {
  if (stage !== 'ammonia' && stage !== 'both' && stage !== 'nitrite') return undefined;
  return day <= OVER_BY_DAY[stage] ? 'usual' : 'slow';
}

/** Whether a nitrate number stands beside nitrite, which makes most kits read nitrate far too high (common practice). */
export function nitrateDisturbed(tests: readonly CycleTest[]): boolean {
  return tests.some(({ nitrite, nitrate }) => nitrate !== undefined && !none('nitrite', nitrite));
}
