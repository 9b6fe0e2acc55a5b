import { z } from 'zod';
import { Problem } from '../../core/problem.ts';
import { parameter, type ParameterId } from '../../core/water/parameter.ts';
import { defineCommand } from '../command.ts';
import { quantityOption, textOption } from '../options.ts';
import { amountAnswer } from './amount-answer.ts';
import { askedCompound, askedParameter, askedPurity, askedWater } from './asked.ts';
import { askedChange, believable, believableRise, withinKit, type Change } from './change.ts';
import { noDose, retestFirst, sameToTheKit } from './no-dose.ts';
import { askedPace } from './pace.ts';

export const amountCommand = defineCommand({
  path: ['dose', 'amount'],
  summary: 'How many grams of which salt take a reading to its goal, split into safe days',
  example: '/dose amount of:alkalinity now:7.2 goal:8.4 with:sodium carbonate volume:75 gal',
  options: z.strictObject({
    of: textOption('What to raise: alkalinity, calcium, magnesium, nitrate, ...', { suggest: 'parameter' }),
    goal: textOption('Where it should end, e.g. 8.4 dKH; or only the rise, e.g. +1 dKH'),
    now: textOption('What it reads now, e.g. 7.2 dKH').optional(),
    with: textOption('The salt you have, e.g. soda ash, Epsom salt', { suggest: 'compound' }).optional(),
    volume: quantityOption(
      'volume',
      'Net water of the whole system, e.g. 75 gal or 280 L',
      'volume',
    ).optional(),
    purity: quantityOption('share', 'Pure salt in the powder, e.g. 98 %; pure if left out').optional(),
    pace: textOption('Most a day if slower than usual, e.g. 0.5 dKH, or "gentle"').optional(),
  }),
  run: (input, { keep }) => {
    const id = askedParameter(input.of);
    const change = askedChange(id, input.now, input.goal);
    if (change.now !== undefined && !believable(id, change.now))
      return retestFirst(id, change.now, change.read);
    if (change.goal !== undefined && withinKit(id, change.rise)) return sameToTheKit(id, change);
    if (change.rise <= 0) return noDose(id, change);
    if (!reachable(id, change)) throw goalTooHigh(id, input.goal);
    const compound = askedCompound(input.with, id);
    const pace = askedPace(id, input.pace);
    return amountAnswer({
      id,
      change,
      compound,
      water: askedWater(input.volume),
      purity: askedPurity(input.purity),
      pace,
      remindable: keep !== undefined,
    });
  },
});

function reachable(id: ParameterId, { goal, rise }: Change): boolean {
  return goal === undefined ? believableRise(id, rise) : believable(id, goal);
}

function goalTooHigh(id: ParameterId, given: string): Problem {
  const { label, plausible, target, unit } = parameter(id);
  return new Problem(`${given} is not a goal for ${label}.`, {
    field: 'goal',
    given,
    limit: `${plausible.join(' to ')} ${unit}`,
    hint: `Most reefs are kept at ${target.join(' to ')} ${unit} (common practice).`,
  });
}
