import { z } from 'zod';
import { changesToGoal, fractionForGoal, type Changes } from '../../core/change/exchange.ts';
import { course } from '../../core/change/routine.ts';
import { Problem } from '../../core/problem.ts';
import { fixed, toUnit } from '../../core/quantity/format.ts';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { defineCommand } from '../command.ts';
import { quantityOption, textOption } from '../options.ts';
import { causes, matchWater, mostAtOnce, netVolume, tooMuch } from './advice.ts';
import { never, readLines, type Plan } from './goal-never.ts';
import { sizeOf } from './goal-size.ts';
import { askFirst, stillUnusual, sureOption, type PlannedLevel } from '../unusual.ts';
import { opened } from '../short/remark-first.ts';
import { plannedOf, readLevels } from './level.ts';
import { percent, readWater, shareOf } from './pour.ts';
import { days, readEvery, readRise } from './rate.ts';
import { say } from '../../core/wording/say.ts';

export const goalCommand = defineCommand({
  path: ['waterchange', 'goal'],
  summary: 'How many water changes reach a level, how much water and how long',
  example: '/waterchange goal of:nitrate now:80 ppm goal:10 ppm share:20 % every:7 days volume:55 gal',
  options: z.strictObject({
    of: textOption('What is measured: nitrate, phosphate, alkalinity, ...', { suggest: 'mixed' }),
    now: textOption('Reading now, e.g. 80 ppm'),
    goal: textOption('Level you want, e.g. 10 ppm'),
    share: quantityOption('share', 'Share of the water in each change, e.g. 20 %').optional(),
    amount: quantityOption('volume', 'Or how much of it in each, e.g. 20 L').optional(),
    times: z.int().min(1).max(100).describe('Or how many changes it should take').optional(),
    every: quantityOption('days', 'Time between changes; 7 days if left out').optional(),
    volume: quantityOption('volume', 'Net water in the whole system', 'volume').optional(),
    fresh: textOption('Level in the new salt water; nitrate and phosphate: 0 if left out').optional(),
    rise: textOption('How much it climbs by itself, e.g. 4 ppm a week; none if left out').optional(),
    sure: sureOption(),
  }),
  run: (input): Answer => {
    const levels = readLevels(input);
    const everyDays = readEvery(input.every);
    const rise = input.rise === undefined ? 0 : readRise(levels.id, input.rise, everyDays);
    const aim = { ...levels, goal: levels.goal ?? 0 };
    const water = readWater(input.volume);
    const plan = {
      levels: aim,
      water,
      fraction: shareOf(input, water) ?? sizeOf(aim, input.times),
      everyDays,
      rise,
      isTimed: input.every !== undefined,
    };
    if (input.rise !== undefined && !levels.waste) {
      throw new Problem(say('change.onlyWhatBuildsUp'), { field: 'rise', given: input.rise });
    }
    const again: PlannedLevel['again'] = (label, changed) =>
      action(label, 'waterchange goal', { ...input, times: input.times?.toString(), ...changed });
    const asked = askFirst({ ...plannedOf(levels, plan.levels.goal), sure: input.sure, again });
    return asked ?? reach(plan);
  },
});

function reach(plan: Plan): Answer {
  const { levels, fraction, rise } = plan;
  const { now, goal, fresh, about, show } = levels;
  const isThere = Math.abs(toUnit(about.kind, now - goal, about.unit)) < about.kitResolution / 2;
  if ((levels.waste && goal >= now) || isThere) {
    const place =
      show(now) === show(goal)
        ? `already is at ${show(goal)}`
        : `at ${show(now)} is already ${isThere ? 'as near to' : 'below'} ${show(goal)}${isThere ? ' as a kit can tell' : ''}`;
    return answer({
      headline: `Nothing to do: ${about.label} ${place}.`,
      read: [...levels.read, `goal ${show(goal)}`, ...levels.notes],
    });
  }
  const alone = fractionForGoal({ now, goal, fresh });
  if (alone === undefined || goal === fresh) {
    throw new Problem(say('change.changesWithWaterCannot', { label: about.label, goal: show(goal) }), {
      field: 'goal',
      given: show(goal),
      limit: say('change.betweenNewWater', { now: show(now), fresh: show(fresh) }),
      hint: say('change.changesComeCloseLevel'),
    });
  }
  const changes = changesToGoal({ now, goal, fresh }, fraction, rise);
  return changes === undefined ? never(plan) : counted(plan, changes, alone);
}

function counted(plan: Plan, changes: Changes, alone: number): Answer {
  const { levels, water, fraction, everyDays, rise } = plan;
  const { now, goal, fresh, about, show } = levels;
  const { whole, exact } = changes;
  const levelsAt = course(now, { fresh, rise, fraction }, whole);
  const path = levelsAt.slice(0, 12);
  const last = levelsAt.at(-1)?.after ?? now;
  const poured = water.poured(fraction);
  const span = plan.isTimed && whole > 1 ? ` in ${days(everyDays * (whole - 1))}` : '';
  const all = `${water.sum(Array<number>(whole).fill(poured))} in all`;
  const made = rise > 0 ? `with ${show(rise)} made between changes` : 'if none is made meanwhile';
  const unusual = stillUnusual(plannedOf(levels, goal)).trim();
  const plural = whole === 1 ? '1 change' : `${whole} changes`;
  const main = `${plural} of ${percent(fraction)} (${water.part(poured)} each) ${whole === 1 ? 'brings' : 'bring'} ${about.label} from ${show(now)} to ${show(goal)}${span} ${made}.`;
  const given = answer({
    headline: '',
    read: readLines(plan),
    facts: [
      {
        label: 'new water and time',
        value:
          whole === 1
            ? all
            : `${all}, ${days(everyDays * (whole - 1))} from the first to the last at one every ${days(everyDays)}`,
      },
      ...[0.3, 0.5].filter((other) => other > fraction).map((other) => otherShare(plan, other)),
      {
        label: 'one change alone',
        value: percent(alone),
        verdict: alone > mostAtOnce ? 'too much at once' : 'possible',
      },
      { label: 'after the last change', value: show(last) },
    ],
    steps: [
      ...levels.doubts,
      levels.waste
        ? `Test the new salt water and the top-off water for ${about.label}.`
        : `Test the ${about.label} of each new batch.`,
      ...(alone > mostAtOnce && fraction < 0.3
        ? ['Two or three changes of 30 to 50 % some days apart come first; then go on as planned.']
        : []),
      matchWater,
      `Test after the second change: ${show(path[1]?.after ?? path[0]?.after ?? now)} is expected. A higher reading means more is being made.`,
      causes(levels),
    ],
    working: [
      'changes = ln((goal - new water)/(now - new water)) / ln(1 - share), with the settled level in place of the new water when some is made',
      `just after each change: ${path.map((at) => show(at.after)).join(', ')}${whole > path.length ? ', ...' : ''}`,
      `as a real number: ${fixed(exact, 2)} changes`,
      `Changes do not add up: four of ${percent(fraction)} take out ${percent(1 - (1 - fraction) ** 4)} of what was there.`,
    ],
    dangers: fraction > mostAtOnce ? [tooMuch(levels)] : [],
    cautions: [
      ...(rise > 0 || !levels.waste
        ? []
        : [
            `Every tank makes ${about.label}: it takes longer, or never arrives. Give the rise to count it in.`,
          ]),
      netVolume,
    ],
    sources: ['mixing', 'practice', ...about.basis],
  });
  const goalOff = { label: 'the goal', value: unusual, isBefore: true } as const;
  return opened([{ value: main }, ...(unusual === '' ? [] : [goalOff])], given);
}

function otherShare({ levels, rise }: Plan, fraction: number): Answer['facts'][number] {
  const changes = changesToGoal(levels, fraction, rise);
  const value =
    changes === undefined
      ? 'never gets there'
      : `${changes.whole} ${changes.whole === 1 ? 'change' : 'changes'}`;
  return { label: `with ${percent(fraction)} each`, value };
}
