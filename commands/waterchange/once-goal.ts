import { afterChanges, fractionForGoal } from '../../core/change/exchange.ts';
import { Problem } from '../../core/problem.ts';
import { fixed, fromTo, toUnit } from '../../core/quantity/format.ts';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import {
  afterSome,
  afterWorking,
  causes,
  matchWater,
  mostAtOnce,
  netVolume,
  tooFast,
  tooMuch,
} from './advice.ts';
import { opened } from '../short/remark-first.ts';
import { stillUnusual } from '../unusual.ts';
import { plain, plannedOf, type Levels } from './level.ts';
import { percent, type Water } from './pour.ts';
import { say } from '../../core/wording/say.ts';

export interface ToGoal {
  readonly goal: number;
  readonly fraction: number;
}

export function neededFor(levels: Levels, goal: number): ToGoal {
  const { now, fresh, show, about } = levels;
  const fraction = fractionForGoal({ now, goal, fresh });
  if (fraction !== undefined) return { goal, fraction };
  throw new Problem(
    say('change.noWaterChangeTakes', { label: about.label, now: show(now), goal: show(goal) }),
    {
      field: 'goal',
      given: show(goal),
      limit: say('change.betweenLevelNewWater', { now: show(now), fresh: show(fresh) }),
    },
  );
}

export function forGoal(levels: Levels, water: Water, toGoal: ToGoal, fraction: number | undefined): Answer {
  const { now, fresh, show, about } = levels;
  const need = toGoal.fraction;
  const wrongTool = need > mostAtOnce;
  const move = `${about.label} ${fromTo(show(now), show(toGoal.goal))}`;
  const asked = fraction === undefined ? [] : [afterSome(levels, water, fraction, 1)];
  const unusual = stillUnusual(plannedOf(levels, toGoal.goal)).trim();
  const [main, then] = headline(levels, water, toGoal, move);
  const given = answer({
    headline: '',
    read: [...levels.read, `goal ${show(toGoal.goal)}`, ...water.read, ...levels.notes],
    facts: [...asked, ...(wrongTool ? [1, 2, 3].map((n) => afterSome(levels, water, 0.25, n)) : [])],
    steps: isThere(levels, toGoal.goal)
      ? []
      : [
          ...levels.doubts,
          ...(wrongTool
            ? splitSteps(levels, water, toGoal.goal)
            : [matchWater, 'Test again the next day.', causes(levels)]),
        ],
    working: [
      `share = (now - goal)/(now - new water) = (${plain(levels, now)} - ${plain(levels, toGoal.goal)})/(${plain(levels, now)} - ${plain(levels, fresh)}) = ${percent(need)}`,
      ...(wrongTool ? [afterWorking(levels, 1 / 3)] : []),
    ],
    dangers: [
      ...tooFast(levels, wrongTool ? afterChanges({ now, fresh, fraction: 1 / 3 }) : toGoal.goal),
      ...(wrongTool ? [tooMuch(levels)] : []),
      ...(levels.id === 'alkalinity' && toGoal.goal < now
        ? ['Do not pull alkalinity down with acid or carbon dioxide.']
        : []),
    ],
    cautions: [netVolume],
    sources: ['mixing', 'practice', ...about.basis],
    next: wrongTool ? [severalChanges(levels, toGoal.goal)] : [],
  });
  return opened(
    [
      { value: main },
      ...(then === undefined ? [] : [{ label: 'instead', value: then }]),
      ...(unusual === '' ? [] : [{ label: 'the goal', value: unusual, isBefore: true } as const]),
    ],
    given,
  );
}

/** Nearer to the goal than half of what a kit can tell apart. */
function isThere({ now, about }: Levels, goal: number): boolean {
  return Math.abs(toUnit(about.kind, now - goal, about.unit)) < about.kitResolution / 2;
}

/** What one change does, and what to do where it is too much. */
function headline(
  levels: Levels,
  water: Water,
  { fraction, goal }: ToGoal,
  move: string,
): readonly [string, string?] {
  const { about, show } = levels;
  if (isThere(levels, goal))
    return [`Nothing to change: ${about.label} is at the goal of ${show(goal)}, as near as a kit can tell.`];
  if (fraction <= mostAtOnce)
    return [`One change of ${percent(fraction)} (${water.part(fraction)}) takes ${move}.`];
  if (levels.id === 'ammonia') {
    const half = show(afterChanges({ ...levels, fraction: 0.5 }));
    return [
      `Change half now (${water.part(0.5)}), which brings ${half}: ${show(goal)} would take ${percent(fraction)} at once.`,
    ];
  }
  const third = show(afterChanges({ ...levels, fraction: 1 / 3 }));
  return [
    `A water change alone is the wrong tool: ${about.label} ${show(goal)} would take ${percent(fraction)} at once.`,
    `A third (${water.part(1 / 3)}) brings ${third}.`,
  ];
}

function splitSteps(levels: Levels, water: Water, goal: number): readonly string[] {
  if (levels.id === 'ammonia') {
    return [
      'Match the new water to the tank in salinity and temperature.',
      'Feed nothing, give plenty of air, and look for a dead animal.',
      'Test again after some hours and repeat while ammonia still shows.',
    ];
  }
  const change = `Change 20 to 33 % (${water.part(0.2)} to ${water.part(1 / 3)})`;
  if (levels.id !== 'alkalinity' || goal > levels.now) {
    return [
      `Test again first, with fresh reagents or a second kit.`,
      `${change}, then again some days apart.`,
      matchWater,
      causes(levels),
    ];
  }
  const gapDkh = toUnit('alkalinity', levels.now - goal, 'dKH');
  return [
    'Test again first, with a fresh sample and a second kit.',
    'Stop every source of alkalinity, limewater too. Leave calcium as it is.',
    'Check pH, and look for a white haze or crust: minerals falling out.',
    `${change} only if corals look unwell, such as shut polyps.`,
    matchWater,
    `Let the tank use the rest: at 0.5 dKH a day ${fixed(gapDkh, 1)} dKH takes about ${Math.ceil(gapDkh / 0.5 - 1e-6)} days.`,
    'Test daily and start dosing again just above the goal.',
  ];
}

function severalChanges(levels: Levels, goal: number): Answer['next'][number] {
  const { id, now, fresh, about } = levels;
  const text = (level: number): string => `${fixed(toUnit(about.kind, level, about.unit), 3)} ${about.unit}`;
  const input = { of: id, now: text(now), goal: text(goal), fresh: text(fresh), share: '25 %' };
  return action(say('change.countChanges25'), 'waterchange goal', input);
}
