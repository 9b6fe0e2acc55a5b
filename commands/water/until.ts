import { z } from 'zod';
import { Problem } from '../../core/problem.ts';
import { fixed, fromUnit, significant, toUnit } from '../../core/quantity/format.ts';
import { readAlike, readQuantity } from '../../core/quantity/read.ts';
import { isBelievable, limitsOf } from '../../core/water/limits.ts';
import { findParameter, parameter, parameterIds, type ParameterId } from '../../core/water/parameter.ts';
import { possible } from '../../core/water/possible.ts';
import type { Answer } from '../answer.ts';
import { defineCommand } from '../command.ts';
import { moreThanAnyTank } from '../dose/use-answer.ts';
import { retestFirst } from '../dose/no-dose.ts';
import { quantityOption, textOption } from '../options.ts';
import { mixes } from '../waterchange/level.ts';
import { readPerDay } from '../waterchange/rate.ts';
import { afterDays, tooFastToBelieve, untilGoal, type Course } from './until-answer.ts';
import { say } from '../../core/wording/say.ts';

export const untilCommand = defineCommand({
  path: ['water', 'until'],
  summary: 'When a level gets somewhere: it falls or climbs steadily, or where it is after a time',
  example: '/water until of:alkalinity now:8.4 dKH use:0.3 dKH a day goal:7 dKH',
  options: z.strictObject({
    of: textOption('What is measured: alkalinity, nitrate, ...', { suggest: 'mixed' }),
    now: textOption('What it reads now, e.g. 8.4 dKH'),
    use: textOption('How much it falls, e.g. 0.3 dKH a day').optional(),
    rise: textOption('Or how much it climbs, e.g. 4 ppm a week').optional(),
    goal: textOption('The level asked about; the end of the usual range if left out').optional(),
    days: quantityOption('days', 'Or the time asked about, e.g. 5 days').optional(),
  }),
  run: ({ of, now, use, rise, goal, days }): Answer => {
    const id = steady(of);
    if ((use === undefined) === (rise === undefined)) throw oneOf(use);
    const { kind, unit } = parameter(id);
    const own = (value: number): number => toUnit(kind, value, unit);
    const texts = [
      { field: 'now', text: now },
      ...(goal === undefined ? [] : [{ field: 'goal', text: goal }]),
    ];
    const found = readAlike(kind, texts, { plausible: believableIn(id) });
    const [from, to] = found.map(({ value }, index) =>
      possible(id, texts[index]?.field ?? 'now', own(value)),
    );
    if (from === undefined) throw new Error('readAlike lost a reading');
    const rate = readPerDay(id, use ?? rise ?? '', use === undefined ? 'rise' : 'use');
    const perDay = own(rate.perDay) * (use === undefined ? 1 : -1);
    const read = [
      `${parameter(id).label} ${significant(from, 4)} ${unit} now, ${perDay < 0 ? 'falling' : 'climbing'} ${significant(Math.abs(perDay), 3)} ${unit} a day`,
      ...new Set([...found.flatMap(({ notes }) => notes), ...rate.notes]),
    ];
    if (!isBelievable(id, from)) return retestFirst(id, fromUnit(kind, from, unit), read);
    const course: Course = { id, from, perDay, read };
    if (moreThanAnyTank(id, perDay)) return tooFastToBelieve(course);
    if (days !== undefined && goal === undefined) {
      const time = readQuantity('days', days, { field: 'days', fallback: 'days' });
      return afterDays(course, time.value);
    }
    return untilGoal(course, to ?? usualEnd(id, perDay), goal !== undefined);
  },
});

/** @throws Problem for a level that goes no straight way, or has a command of its own. */
function steady(of: string): ParameterId {
  const id = findParameter(of);
  if (id !== undefined && mixes(id)) return id;
  throw new Problem(
    id === undefined
      ? say('change.iDoNotKnow', { of })
      : say('water.doesNotGoStraight', { label: parameter(id).label }),
    {
      field: 'of',
      given: of,
      limit: parameterIds
        .filter(mixes)
        .map((one) => parameter(one).label)
        .join(', '),
      ...(id === 'salinity' ? { hint: say('water.salinityUseSalinityForecast') } : {}),
    },
  );
}

function oneOf(use: string | undefined): Problem {
  return new Problem(use === undefined ? say('water.howFastDoesMove') : say('water.eitherFallsOrClimbs'), {
    field: use === undefined ? 'use' : 'rise',
    hint: say('water.sayUse03'),
  });
}

function believableIn(id: ParameterId): readonly [number, number] | undefined {
  const { kind, unit } = parameter(id);
  if (kind === 'alkalinity') return undefined;
  const [low, high] = limitsOf(id).believable;
  return [fromUnit(kind, low, unit), fromUnit(kind, high, unit)];
}

/** The end of the usual range it moves towards. */
function usualEnd(id: ParameterId, perDay: number): number {
  const [low, high] = limitsOf(id).usual;
  return Number(fixed(perDay < 0 ? low : high, 4));
}
