import { z } from 'zod';
import { changesToSettle, course, fractionToHold, settles } from '../../core/change/routine.ts';
import { Problem } from '../../core/problem.ts';
import { fixed, toUnit } from '../../core/quantity/format.ts';
import { mostPossible } from '../../core/water/possible.ts';
import { parameter, type ParameterId } from '../../core/water/parameter.ts';
import { answer, type Answer, type Fact } from '../answer.ts';
import { defineCommand } from '../command.ts';
import { quantityOption, textOption } from '../options.ts';
import { opened } from '../short/remark-first.ts';
import { mixedParameter, readLevel, readLevels, shownAs, waste } from './level.ts';
import { percent, readShare, readWater, type Water } from './pour.ts';
import { days, readEvery, readRise } from './rate.ts';
import { toHold } from './routine-hold.ts';
import { stays } from './routine-stays.ts';
import { say } from '../../core/wording/say.ts';

export const routineCommand = defineCommand({
  path: ['waterchange', 'routine'],
  summary: 'Where a level settles under regular changes, and the share that holds a level',
  example: '/waterchange routine of:nitrate rise:4 ppm a week share:15 % every:7 days goal:10 ppm',
  options: z.strictObject({
    of: textOption('What builds up: nitrate or phosphate', { suggest: 'waste' }),
    rise: textOption(
      'How much it climbs by itself, e.g. 4 ppm a week; left out, it stays where it is',
    ).optional(),
    share: quantityOption('share', 'Share of the water in each change, e.g. 15 %').optional(),
    every: quantityOption('days', 'Time between changes; 7 days if left out').optional(),
    goal: textOption('Highest level you accept, just before a change').optional(),
    now: textOption('Reading now, to see the course from here').optional(),
    fresh: textOption('Level in the new salt water; 0 if left out').optional(),
    volume: quantityOption('volume', 'Net water in the whole system', 'volume').optional(),
  }),
  run: (input): Answer => {
    const id = builtUp(input.of);
    const everyDays = readEvery(input.every);
    const fresh = input.fresh === undefined ? 0 : readLevel(id, input.fresh, 'fresh');
    const levels =
      input.now === undefined ? undefined : readLevels({ of: input.of, now: input.now, fresh: input.fresh });
    if (input.rise === undefined) return stays(id, input, { levels, fresh, everyDays });
    const rise = readRise(id, input.rise, everyDays);
    const water = readWater(input.volume);
    const goal = input.goal === undefined ? undefined : readLevel(id, input.goal, 'goal');
    if (input.share === undefined)
      return toHold({ id, fresh, rise, everyDays, goal, water, freshGiven: input.fresh !== undefined });
    return routine({
      id,
      fresh,
      freshGiven: input.fresh !== undefined,
      rise,
      fraction: readShare(input.share),
      everyDays,
      goal,
      now: levels?.now,
      water,
      doubts: levels?.doubts ?? [],
    });
  },
});

function builtUp(of: string): ParameterId {
  const id = mixedParameter(of);
  if (waste.has(id)) return id;
  throw new Problem(say('change.usedUp', { label: parameter(id).label }), {
    field: 'of',
    given: of,
    limit: say('change.nitratePhosphate'),
  });
}

interface Plan {
  readonly id: ParameterId;
  readonly fresh: number;
  readonly freshGiven: boolean;
  readonly rise: number;
  readonly fraction: number;
  readonly everyDays: number;
  readonly goal: number | undefined;
  readonly now: number | undefined;
  readonly water: Water;
  readonly doubts: readonly string[];
}

function routine(plan: Plan): Answer {
  const { id, fresh, rise, fraction, everyDays, goal, now, water } = plan;
  const { label, basis, kind, unit } = parameter(id);
  const show = shownAs(id);
  const { before, after } = settles(plan);
  const hold = goal === undefined ? undefined : held(plan, goal);
  if (toUnit(kind, before, unit) > mostPossible(id)) return noLevel(plan);
  const within = fraction <= 0.99 ? changesToSettle(fraction) : 1;
  const given = answer({
    headline: '',
    read: [
      `${label} climbs ${show(rise)} between changes ${days(everyDays)} apart`,
      plan.freshGiven
        ? `new salt water ${show(fresh)}`
        : `new salt water taken as ${show(0)}; test it, mixes and top-off water can hold some`,
      `each change ${percent(fraction)} (${water.part(fraction)})`,
      ...water.read,
    ],
    facts: [
      ...(hold === undefined ? [] : [hold.fact]),
      { label: '95 % of the way there', value: `after ${within} changes, ${days(within * everyDays)}` },
    ],
    steps: [...plan.doubts, ...steps(plan, before)],
    working: [
      `peak = new water + rise/share = ${show(fresh)} + ${show(rise)}/${fixed(fraction, 3)} = ${show(before)}; trough = peak - rise = ${show(after)}`,
      ...(now === undefined
        ? []
        : [
            `just before each change from now: ${course(now, plan, 8)
              .map((at) => show(at.before))
              .join(', ')}, ...`,
          ]),
    ],
    cautions: ['A steady rise is a model: feeding, stock and growth change it. Test to see where it goes.'],
    sources: ['mixing', 'practice', ...basis],
  });
  const main = `With ${percent(fraction)} every ${days(everyDays)} ${label} settles at ${show(before)} just before a change and ${show(after)} just after.`;
  return opened([{ value: main }, hold && { value: hold.sentence }], given);
}

/** A rise that such changes hold nowhere near a tank's water. */
function noLevel({ id, rise, fraction, everyDays, water }: Plan): Answer {
  const { label, unit } = parameter(id);
  const show = shownAs(id);
  return answer({
    headline: `With ${percent(fraction)} every ${days(everyDays)} ${label} does not settle anywhere a tank can be: it would climb past ${mostPossible(id)} ${unit}. Check the rise and the share.`,
    read: [`${label} climbs ${show(rise)} between changes ${days(everyDays)} apart`, ...water.read],
    steps: [
      `Test ${label} twice, a week apart with no change between, to know the rise.`,
      'Find what makes it and cut that first; changes of this size cannot keep up.',
    ],
    sources: ['mixing', 'practice'],
  });
}

function held(plan: Plan, goal: number): { sentence: string; fact: Fact } {
  const { id, fresh, rise, everyDays, water } = plan;
  const show = shownAs(id);
  const fraction = fractionToHold(goal, fresh, rise);
  const label = `share that holds ${show(goal)}`;
  if (fraction === undefined) {
    return {
      sentence: `No change of any size every ${days(everyDays)} holds ${show(goal)}.`,
      fact: { label, value: 'none' },
    };
  }
  const value = `${percent(fraction)} (${water.part(fraction)}) every ${days(everyDays)}`;
  return {
    sentence: `To peak at ${show(goal)}: ${percent(fraction)} each time.`,
    fact: { label, value },
  };
}

function steps({ id, goal, fraction }: Plan, peak: number): readonly string[] {
  const { label } = parameter(id);
  const show = shownAs(id);
  if (goal === undefined || peak <= goal)
    return [
      'Keep the routine and test just before a change.',
      'Match the new water in salinity and temperature.',
    ];
  return [
    `Cut what makes ${label} first: less food, dirt taken out, dead animals looked for, top-off water tested.`,
    'Or add a way out besides water changes: better skimming, algae grown and harvested, more of both slowly.',
    `Larger changes than ${percent(fraction)} help too, but are the costly way to hold ${show(goal)}.`,
    'Test just before a change for some weeks.',
  ];
}
