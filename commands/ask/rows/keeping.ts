import type { PrimerId } from '../../../core/care/primers/primer.ts';
import { urgentSide } from '../../../core/water/limits.ts';
import { met, type Met } from '../../../core/language/met.ts';
import type { Frame } from '../../../core/language/frame.ts';
import { say } from '../../../core/wording/say.ts';
import type { Answer } from '../../answer.ts';
import { howOften } from '../../checkup/how-often.ts';
import type { OwnContext } from '../../command.ts';
import { firstAnimals } from '../../help/talk.ts';
import { primerCommand } from '../../primer.ts';
import { cycleAnswer } from '../../primer/cycle-answer.ts';
import { cycleTests } from '../../primer/cycle-tests.ts';
import { urgentAction } from '../../urgent/action.ts';
import { call } from '../../called.ts';
import type { Row } from '../row.ts';
import { readableAs } from './readable-as.ts';
import { gearSum } from './gear-said.ts';

/** Beginning, testing, gear and going away: mostly the short cards. */
export const keepingRows: readonly Row[] = [
  {
    kind: 'cycle',
    label: 'ask.kindCycle',
    uses: ['levels', 'of', 'now', 'was', 'moments', 'spans'],
    computes: hasTests,
    answer: (frame, context) => cycle(frame) ?? card('cycle', context),
  },
  {
    kind: 'first-stock',
    label: 'ask.kindFirstStock',
    uses: ['levels', 'of', 'now', 'was', 'corals'],
    computes: hasTests,
    answer: (frame, context) => {
      const isCoral = met(frame.reading.scanned, 'corals.anyCoral', 'corals.softCoral', '#coral');
      return cycle(frame) ?? (isCoral ? card('first corals', context) : firstAnimals());
    },
  },
  {
    kind: 'test-kit',
    label: 'ask.kindTestKit',
    uses: ['of'],
    computes: isTestPlan,
    // What is labelled as no card's has no general one either.
    answer: (frame, context) => {
      if (frame.cards[0]?.name === 'other') return undefined;
      const isOften = isTestPlan(frame) || met(frame.reading.scanned, ...OFTEN);
      return isOften ? howOften(context) : card('test kits', context);
    },
  },
  {
    kind: 'equipment',
    label: 'ask.kindEquipment',
    uses: ['volume', 'otherTemperature', 'spans', 'watts', 'batteries'],
    computes: (frame) => gearSum(frame) !== undefined,
    answer: (frame, context) => {
      const { scanned } = frame.reading;
      const sum = gearSum(frame);
      if (sum !== undefined) return sum;
      const found = gear.find(([, classes]) => met(scanned, ...classes));
      return found === undefined ? undefined : card(found[0], context);
    },
  },
  { kind: 'holiday', label: 'ask.kindHoliday', uses: [], answer: (_, context) => card('holiday', context) },
  {
    kind: 'moving',
    label: 'ask.kindMoving',
    uses: [],
    answer: (_, context) => card('moving house', context),
  },
];

/** Asked is how often everything is tested, and of no one parameter. */
function isTestPlan({ slots: { of }, cards: [first] }: Frame): boolean {
  return of === undefined && first?.name === 'test interval';
}

/** Asked is when or what to test rather than how. */
const OFTEN: readonly Met[] = [
  'manner.askWhen',
  'manner.askWhich',
  'sums.daily',
  'sums.weekly',
  'sums.monthly',
  'times.first',
];

/** Gear that a short card is about. */
const gear: readonly (readonly [PrimerId, readonly Met[]])[] = [
  [
    'water and mains',
    [
      'hardware.plug',
      'hardware.powerStrip',
      'hardware.extensionLead',
      'hardware.residual',
      'hardware.breaker',
      'hardware.cable',
      'hardware.voltage',
    ],
  ],
  ['top-off', ['gear.topOff', 'gear.floatSwitch', 'deeds.topsOff']],
  ['flow', ['gear.flowPump']],
];

/** Snails and brown dust are usual after a cycle. */
const ALGAE: readonly Met[] = [
  'animals.hairAlgae',
  'animals.diatoms',
  'looks.green',
  'looks.brown',
  'looks.hairy',
];

function hasTests({ slots }: Frame): boolean {
  return cycleTests(slots).length > 0;
}

function cycle({ slots, reading: { scanned } }: Frame): Answer | undefined {
  const [first, ...more] = cycleTests(slots);
  if (first === undefined) return undefined;
  // With a fish in it no stage is "usual".
  const isCourseAsked = more.length === 0 && !met(scanned, 'lives.stocked');
  const given = cycleAnswer(
    [first, ...more],
    met(scanned, ...ALGAE),
    isCourseAsked ? dayOf(slots) : undefined,
  );
  const { ammonia } = more.at(-1) ?? first;
  if (urgentSide('ammonia', ammonia) === undefined) return given;
  return {
    ...given,
    next: [{ ...urgentAction('ammonia'), label: say('ask.animalsInAlready') }, ...given.next],
  };
}

/** How long it has been cycling, days: the one time that was said. */
function dayOf({ spans = [] }: Frame['slots']): number | undefined {
  const [only, other] = spans;
  return only === undefined || other !== undefined ? undefined : readableAs('days', only);
}

function card(id: PrimerId, context: OwnContext): Answer {
  return call(primerCommand, { card: id }, context);
}
