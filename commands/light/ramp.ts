import { z } from 'zod';
import { usualLight, usualLightWords } from '../../core/corals/group-light.ts';
import {
  LONG_PLAN_WEEKS,
  rampPlan,
  USUAL_RAISE_PERCENT,
  usualRampWeeks,
  type RampPlan,
} from '../../core/light/ramp.ts';
import { fixed } from '../../core/quantity/format.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { answer, type Answer, type Fact } from '../answer.ts';
import { defineCommand } from '../command.ts';
import { quantityOption } from '../options.ts';
import { levelText, readLevels, type Levels } from './level.ts';
import {
  bandFact,
  LOOK_NOT_ONLY_LIGHT,
  TOO_MUCH_ACTION,
  TOO_MUCH_IS_COMMONER,
  TOO_MUCH_SIGNS,
} from './words.ts';

export const rampCommand = defineCommand({
  path: ['light', 'ramp'],
  summary: 'Raise the light week by week, from where it is to the goal; lower it at once',
  example: '/light ramp now:100 PAR goal:150 PAR',
  options: z.strictObject({
    now: quantityOption('light', 'The light now: PAR at the coral (100 PAR) or the lamp setting (40 %)'),
    goal: quantityOption('light', 'The light you want, in the same unit'),
    pace: quantityOption('share', `Most to raise in a week; ${USUAL_RAISE_PERCENT} % is usual`).optional(),
  }),
  run: (input): Answer => {
    const levels = readLevels(input.now, input.goal);
    const pace = input.pace === undefined ? undefined : readQuantity('share', input.pace, { field: 'pace' });
    const pacePercent = pace === undefined ? USUAL_RAISE_PERCENT : Math.floor(pace.value * 10) / 10;
    const plan = rampPlan(levels.now.value, levels.goal.value, pacePercent);
    const main = mainPart(levels, plan, pacePercent);
    return answer({
      ...main,
      read: [
        `${levelText(levels.kind, levels.now.value)} now, ${levelText(levels.kind, levels.goal.value)} wanted, the hours unchanged`,
        pace === undefined
          ? `at most ${USUAL_RAISE_PERCENT} % a week, the usual pace (common practice)`
          : `at most ${fixed(pacePercent, 1)} % a week`,
        ...[levels.now, levels.goal].flatMap((level) => level.notes),
      ],
      facts: [
        ...main.facts,
        ...(levels.kind === 'light'
          ? [bandFact('now', levels.now.value), bandFact('goal', levels.goal.value)]
          : []),
      ],
      isList: true,
      dangers: dangers(plan, pacePercent),
      cautions: [...cautions(levels), ...main.cautions],
      sources: ['practice'],
    });
  },
});

function mainPart({ kind, now, goal }: Levels, plan: RampPlan, pacePercent: number): Answer {
  const [from, to] = [levelText(kind, now.value), levelText(kind, goal.value)];
  if (plan.direction === 'stay') {
    return answer({ headline: `The light is at ${to} already: change nothing.`, steps: [TOO_MUCH_SIGNS] });
  }
  if (plan.direction === 'lower') {
    return answer({
      headline: `Lower it from ${from} to ${to} today: less light needs no ramp.`,
      steps: [`Set ${to} now.`, 'Leave it two weeks, then judge by the coral.'],
    });
  }
  const last = plan.steps.at(-1)?.value ?? now.value;
  const pace = `at most ${fixed(pacePercent, 1)} % a week`;
  const long = plan.weeks > LONG_PLAN_WEEKS;
  return answer({
    headline: long
      ? `${from} to ${to} takes ${plan.weeks} weekly steps of ${pace}, more than half a year: here are the first ${LONG_PLAN_WEEKS}, to ${levelText(kind, last)}.`
      : `Raise it from ${from} to ${to} in ${weekly(plan.weeks)}, ${pace}: ${levelText(kind, plan.steps[0]?.value ?? goal.value)} this week.`,
    facts: plan.steps.map((step): Fact => ({
      label: `week ${step.week}`,
      value: levelText(kind, step.value),
    })),
    steps: [
      'Week 1 starts today if the corals look well. Hold each value seven days, and look before the next.',
      TOO_MUCH_SIGNS,
      TOO_MUCH_ACTION,
      ...(long
        ? ['Ask whether the goal is needed, or whether the coral can sit lower or higher instead.']
        : []),
    ],
    working: [
      `each week the value before x (1 + ${fixed(pacePercent, 1)} / 100), rounded down; the last step is what is left`,
      `as few steps as the pace and round numbers allow; ${usualRampWeeks.low} to ${usualRampWeeks.high} weeks is a usual full ramp`,
    ],
  });
}

function weekly(weeks: number): string {
  return weeks === 1 ? 'one step' : `${weeks} weekly steps`;
}

function dangers({ direction }: RampPlan, pacePercent: number): readonly string[] {
  return direction === 'raise' && pacePercent > USUAL_RAISE_PERCENT
    ? [
        `${fixed(pacePercent, 1)} % a week is faster than the usual ${USUAL_RAISE_PERCENT} %: watch closer, stop sooner.`,
      ]
    : [];
}

function cautions({ kind, now, goal }: Levels): string[] {
  const found = [TOO_MUCH_IS_COMMONER, LOOK_NOT_ONLY_LIGHT];
  if (kind === 'share')
    found.push('Lamps are not linear in their setting: measure PAR at the coral when you can.');
  const usual = usualLight('large-polyp');
  if (kind === 'light' && goal.value > now.value && goal.value > usual.highPpfd) {
    found.push(
      `${usualLightWords('large-polyp')} A goal above that is for corals that want it: ask for the coral with /light range.`,
    );
  }
  return found;
}
