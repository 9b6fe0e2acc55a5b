import { z } from 'zod';
import { Problem } from '../../core/problem.ts';
import { significant } from '../../core/quantity/format.ts';
import { parameter, type ParameterId } from '../../core/water/parameter.ts';
import type { Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { defineCommand } from '../command.ts';
import { quantityOption, textOption } from '../options.ts';
import { amountAnswer } from './amount-answer.ts';
import { askFirst, stillUnusual, sureOption, type PlannedLevel } from '../unusual.ts';
import { opened, withSalinity } from '../short/remark-first.ts';
import { askedCompound, askedParameter, askedPurity, askedWater, inOwnUnit, shown } from './asked.ts';
import { askedChange, believable, believableRise, withinKit, type Change } from './change.ts';
import { noDose, retestFirst, sameToTheKit } from './no-dose.ts';
import { askedPace } from './pace.ts';
import { askedSalinity, type AskedSalinity } from './salinity.ts';
import { followsSalinity } from '../../core/water/assess.ts';
import { limitsOf } from '../../core/water/limits.ts';
import { say } from '../../core/wording/say.ts';

const options = z.strictObject({
  of: textOption('What to raise: alkalinity, calcium, ...', { suggest: 'dosed' }),
  goal: textOption('Where it should end: 8.4 dKH; or the rise: +1 dKH'),
  now: textOption('What it reads now, e.g. 7.2 dKH').optional(),
  with: textOption('The salt you have, e.g. soda ash, Epsom salt', { suggest: 'compound' }).optional(),
  volume: quantityOption(
    'volume',
    'Net water of the whole system, e.g. 75 gal or 280 L',
    'volume',
  ).optional(),
  purity: quantityOption('share', 'Pure salt in the powder; pure if left out').optional(),
  pace: textOption('Most a day if slower than usual: 0.5 dKH, gentle').optional(),
  salinity: textOption('What salinity reads', {
    fill: 'salinity',
  }).optional(),
  spoons: z.boolean().describe('Also roughly in level spoons').optional(),
  sure: sureOption(),
});

type AmountInput = z.infer<typeof options>;

export const amountCommand = defineCommand({
  path: ['dose', 'amount'],
  summary: 'Grams of salt to take a reading to its goal, split into safe days',
  example: '/dose amount of:alkalinity now:7.2 goal:8.4 with:sodium carbonate volume:75 gal',
  options,
  run: (input): Answer => {
    const id = askedParameter(input.of);
    const change = askedChange(id, input.now, input.goal);
    if (change.now !== undefined && !believable(id, change.now))
      return retestFirst(id, change.now, change.read);
    if (change.goal !== undefined && withinKit(id, change.rise)) return sameToTheKit(id, change);
    if (change.rise <= 0) return noDose(id, change);
    if (!reachable(id, change)) throw goalTooHigh(id, input.goal);
    const salinity = askedSalinity(input.salinity);
    const towards = planned(id, change, input, salinity);
    const asked = askFirst(towards);
    if (asked !== undefined)
      return opened(withSalinity(salinity.remark, [{ label: 'The goal', value: asked.headline }]), asked);
    const compound = askedCompound(input.with, id);
    const pace = askedPace(id, input.pace);
    return amountAnswer({
      id,
      change,
      compound,
      water: askedWater(input.volume),
      purity: askedPurity(input.purity),
      pace,
      salinity,
      first: stillUnusual(towards),
      inSpoons: input.spoons === true,
    });
  },
});

/**
 * The level a dose leads to. An ion that follows a salinity that is off counts as at 35: 420 mg/L of calcium at 27.9 ppt
 * is 527. Where only a rise is known, it counts from the lower end of the usual range.
 */
function planned(
  id: ParameterId,
  { now, goal, rise }: Change,
  input: AmountInput,
  salinity: AskedSalinity,
): PlannedLevel {
  const factor = followsSalinity(id) ? salinity.factor : 1;
  const again: PlannedLevel['again'] = (label, changed) =>
    action(label, 'dose amount', { ...input, spoons: input.spoons?.toString(), ...changed });
  const own = (value: number): number => inOwnUnit(id, value);
  if (goal !== undefined) {
    const level = { id, goal: own(goal) * factor, now: now === undefined ? undefined : own(now) * factor };
    if (factor === 1) return { ...level, sure: input.sure, again };
    const named = `${shown(id, goal)} (${shown(id, goal * factor)} at salinity 35)`;
    return { ...level, named, sure: input.sure, again, hasGoal: false };
  }
  const [low] = limitsOf(id).usual;
  const { unit } = parameter(id);
  const end = low + own(rise);
  const named = `${significant(end)} ${unit}, where a rise of ${shown(id, rise)} ends even from ${low} ${unit},`;
  return { id, goal: end, named, sure: input.sure, again, hasGoal: false };
}

function reachable(id: ParameterId, { goal, rise }: Change): boolean {
  return goal === undefined ? believableRise(id, rise) : believable(id, goal);
}

function goalTooHigh(id: ParameterId, given: string): Problem {
  const { label, unit } = parameter(id);
  const { believable: bounds, usual } = limitsOf(id);
  return new Problem(say('dose.notGoal', { given, label }), {
    field: 'goal',
    given,
    limit: `${bounds.join(' to ')} ${unit}`,
    hint: say('dose.mostReefsKept', { low: String(usual[0]), high: String(usual[1]), unit }),
  });
}
