import {
  cycleStage,
  nitrateDisturbed,
  onItsDay,
  type CycleStage,
  type CycleTest,
} from '../../core/care/cycle.ts';
import { fixed } from '../../core/quantity/format.ts';
import { answer, type Answer } from '../answer.ts';

const headlines: Readonly<Record<CycleStage, string>> = {
  'nothing seen':
    'Not to be told yet: neither ammonia nor nitrite ever showed. Add a small source of ammonia and test again.',
  ammonia: 'Ammonia shows and no nitrite yet: the first stage. Test again in two to three days.',
  both: 'Ammonia and nitrite both show: the middle of a cycle. Test again in two to three days.',
  nitrite: 'Half way: ammonia reads none and nitrite still shows. Wait until both read none.',
  'ammonia not falling': 'Not yet: ammonia is not falling. Wait, and test again in two to three days.',
  'ammonia falling': 'On its way: ammonia falls, nitrite comes next. Wait until both read none.',
  'nitrite not falling':
    'Half way: ammonia reads none, nitrite has not passed its peak yet. Wait until both read none.',
  'nitrite falling':
    'Nearly there: ammonia reads none and nitrite is past its peak, but it is not done. Wait until both read none.',
  'zero once':
    'Perhaps: both read none once. Test again for two days, and see that a little ammonia is gone within 24 hours.',
  'zero held': 'It looks ready: both read none more than once. One proof more, then begin with a few snails.',
};

/** What one test alone shows. */
const OF_ONE_TEST: ReadonlySet<CycleStage> = new Set(['ammonia', 'both', 'nitrite']);

/** How far a tank is that is cycling, and when snails may come; the tests stand in order of time, `day` is that of the last. */
export function cycleAnswer(
  tests: readonly [CycleTest, ...CycleTest[]],
  hasAlgae: boolean,
  day?: number,
): Answer {
  const stage = cycleStage(tests);
  const course = day === undefined ? undefined : onItsDay(stage, day);
  return answer({
    headline: `${course === undefined ? '' : `${courses[course](fixed(day ?? 0, 0))} `}${headlines[stage]}`,
    read: [`${tests.length} ${tests.length === 1 ? 'test' : 'tests'} of a tank that is cycling, mg/L`],
    table: {
      head: ['day', 'ammonia', 'nitrite', 'nitrate'],
      rows: tests.map(({ when, ammonia, nitrite, nitrate }) => [
        when,
        shown(ammonia),
        shown(nitrite),
        nitrate === undefined ? '' : shown(nitrate),
      ]),
    },
    steps: [
      ...(course === 'slow' ? SLOW : []),
      'Wait until ammonia and nitrite both read none for two days.',
      'Better still: feed a small source of ammonia and see it gone within 24 hours.',
      'Then one water change with matched salinity and temperature, and a few snails.',
      ...(hasAlgae ? ['Hair algae and brown dust are normal now; the snails will have food.'] : []),
      'Begin to test alkalinity, calcium and magnesium when corals come, or when pink crusts start to grow.',
    ],
    facts: nitrateFacts(tests),
    dangers: ['No fish as a test.'],
    cautions: [
      ...(OF_ONE_TEST.has(stage) ? ['One test cannot tell whether it falls.'] : []),
      ...(stage.startsWith('nitrite')
        ? [
            'Nitrite is far less toxic in sea water than in fresh: a few hardy snails would likely live. Waiting costs days and is the kinder way.',
          ]
        : []),
      'A kit’s none means below its limit. How long to wait for corals after this is habit, and keepers differ.',
    ],
    working: [
      'Nitrite in sea water: half of young clownfish died in 96 h only at 108.8 mg/L NO2-N (published)',
    ],
    sources: ['practice', 'Medeiros2014'],
  });
}

/** A stage against the day it was seen on. */
const courses = {
  usual: (day: string) => `Not stuck: on day ${day} this is the usual course.`,
  slow: (day: string) => `Slow: by day ${day} it is mostly further on.`,
} as const;
const SLOW = [
  'Slow is not broken: warm it to 25 to 27 °C, move the surface, check alkalinity.',
  'Above about 5 mg/L of ammonia change water to come down to 2.',
];

function nitrateFacts(tests: readonly CycleTest[]) {
  if (!nitrateDisturbed(tests)) return [];
  const value =
    'do not trust it: nitrite makes nitrate kits read far too high; its rise and fall is mostly the test';
  return [{ label: 'nitrate', value }];
}

function shown(value: number): string {
  return fixed(value, 2);
}
