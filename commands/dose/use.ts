import { z } from 'zod';
import { inRange, Problem } from '../../core/problem.ts';
import { daysBetween, splitDate } from '../../core/quantity/dated.ts';
import { fromUnit, significant } from '../../core/quantity/format.ts';
import { readAlike, readQuantity } from '../../core/quantity/read.ts';
import type { UseChange } from '../../core/trend/change.ts';
import { MS_PER_DAY } from '../../core/trend/dated.ts';
import { useOf } from '../../core/trend/use.ts';
import { parameter, type ParameterId } from '../../core/water/parameter.ts';
import type { Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { defineCommand, type Context, type OwnContext } from '../command.ts';
import { filledVolume } from '../fill.ts';
import { loggedUse } from '../log/logged-use.ts';
import { quantityOption, textOption } from '../options.ts';
import { askedTank, keepOf } from '../tank/asked-tank.ts';
import { askedSwap } from './swapped.ts';
import { askedAdded } from './added.ts';
import { askedParameter, askedWater, asWritten, inOwnUnit } from './asked.ts';
import { believable, plausible } from './change.ts';
import { retestFirst } from './no-dose.ts';
import { useAnswer, useWorking } from './use-answer.ts';
import { say } from '../../core/wording/say.ts';

export const useCommand = defineCommand({
  path: ['dose', 'use'],
  summary: 'What the tank uses a day, from two readings and what was added between them',
  example: '/dose use of:alkalinity before:9.3 now:7.5 over:2 days volume:150 gal',
  options: z.strictObject({
    of: textOption('What was tested: alkalinity, calcium, ...', { suggest: 'dosed' }),
    before: textOption(
      'The first reading: 9.3 dKH, or 9.3 on 2026-01-03; from your log if left out',
    ).optional(),
    now: textOption('The later reading, e.g. 7.5 dKH').optional(),
    over: quantityOption('days', 'Time between them without dates, e.g. 36 hours').optional(),
    amount: textOption(
      'Added in all that time or "a day": 20 g (say with what), or a rise: 1.2 dKH',
    ).optional(),
    with: textOption('The salt that was added', { suggest: 'compound' }).optional(),
    changed: textOption('Water changed between them, in all: 10 gal or 10 %').optional(),
    new: textOption('What the new water reads, e.g. 9 dKH').optional(),
    volume: quantityOption('volume', 'Net water of the whole system', 'volume').optional(),
  }),
  run: (input, context): Answer => {
    const id = askedParameter(input.of);
    const { before, now } = input;
    if (before !== undefined && now !== undefined) return fromTyped(id, { ...input, before, now }, context);
    throw readingsNeeded(before === undefined ? 'before' : 'now');
  },
  own: {
    when: ({ before, now }) => before === undefined && now === undefined,
    run: (input, context): Answer => {
      const id = askedParameter(input.of);
      if (context.keep === undefined) throw readingsNeeded('before');
      return fromLog(id, input, context);
    },
  },
});

function readingsNeeded(field: 'before' | 'now'): Problem {
  return new Problem(say('dose.twoReadingsNeeded'), {
    field,
    hint: say('dose.sayBefore93'),
  });
}

interface UseInput {
  readonly over?: string | undefined;
  readonly amount?: string | undefined;
  readonly with?: string | undefined;
  readonly volume?: string | undefined;
  readonly changed?: string | undefined;
  readonly new?: string | undefined;
}

type TypedInput = UseInput & { readonly before: string; readonly now: string };

function fromTyped(id: ParameterId, input: TypedInput, { nowMs }: Context): Answer {
  const { kind, kitResolution } = parameter(id);
  const thisYear = new Date(nowMs).getUTCFullYear();
  const [first, later] = [splitDate(input.before, 'before', thisYear), splitDate(input.now, 'now', thisYear)];
  const texts = [
    { text: first.text, field: 'before' },
    { text: later.text, field: 'now' },
  ];
  const [before, now] = readAlike(kind, texts, { plausible: plausible(id) });
  if (before === undefined || now === undefined) throw new Error('readAlike lost a reading');
  const over = askedTime(daysBetween(first, later), input.over);
  const water = askedWater(input.volume);
  const added = askedAdded(id, input, water, over.value);
  const own = (value: number): number => inOwnUnit(id, value);
  const swapped = askedSwap(id, input, (before.value + now.value) / 2);
  const days = inRange('over', over.value, 0.02, 400, 'days');
  const pair = { before: own(before.value), now: own(now.value) };
  const read = [
    `${parameter(id).label} ${asWritten(id, before)}, then ${asWritten(id, now)}, ${significant(over.value, 3)} days apart`,
    ...new Set([...before.notes, ...now.notes, ...over.notes]),
    added.read,
    ...swapped.read,
    ...water.read,
  ];
  const doubted = [before, now].find(({ value }) => !believable(id, value));
  if (doubted !== undefined) return retestFirst(id, doubted.value, read);
  const typed = {
    readings: [
      { atMs: 0, value: pair.before },
      { atMs: days * MS_PER_DAY, value: pair.now },
    ],
    additions: [{ atMs: 0, rise: own(added.rise) + own(swapped.rise) }],
    resolution: kitResolution,
  };
  const use = useOf(typed, 0);
  if (use === undefined) throw new Error('two readings without a use');
  return useAnswer(id, use, water, read, useWorking(id, use, pair));
}

/**
 * The volume is filled in from the tank the log belongs to. Another one beside the log would be a contradiction, and
 * the answer is for the asker alone only where the tank filled something in.
 */
function fromLog(id: ParameterId, input: UseInput, context: OwnContext): Answer {
  const keep = keepOf(context);
  const tank = askedTank(keep);
  const filled = filledVolume(tank);
  const extra = (['over', 'amount', 'with', 'changed', 'new', 'volume'] as const).find(
    (name) => input[name] !== undefined && !(name === 'volume' && input[name] === filled),
  );
  if (extra !== undefined) {
    throw new Problem(say('dose.goesWithTwoReadings', { extra }), {
      field: extra,
      given: input[extra],
      hint: say('dose.leaveOutTakeReadings', { name: tank.name }),
    });
  }
  const logged = loggedUse(keep, tank, id, context);
  if ('value' in logged) {
    const { kind, unit } = parameter(id);
    return retestFirst(id, fromUnit(kind, logged.value, unit), [`from the log of ${tank.name}`]);
  }
  const { use, change, alert, read, instants } = logged;
  const given = useAnswer(id, use, askedWater(filled), read, useWorking(id, use, undefined));
  const flags = [...changeSteps(id, change), ...(alert === undefined ? [] : [alert])];
  const next = [action(say('dose.showLog'), 'log show', { of: id, tank: tank.name })];
  return { ...given, instants, steps: [...flags, ...given.steps], next };
}

function changeSteps(id: ParameterId, change: UseChange | undefined): readonly string[] {
  if (change === undefined) return [];
  const { unit, label } = parameter(id);
  const { direction, perDay, usualPerDay } = change;
  return [
    `The use of ${label} went ${direction} suddenly: ${significant(perDay, 2)} ${unit} a day now, about ${significant(usualPerDay, 2)} before.`,
    'Test again with the same kit and look for the cause: a doser or reactor that stopped, a dose not logged.',
    'Change the dosing only then.',
  ];
}

/** The time between the readings, from their dates or from what was said. */
function askedTime(
  dated: number | undefined,
  over: string | undefined,
): { value: number; notes: readonly string[] } {
  if (over !== undefined) return readQuantity('days', over, { field: 'over', fallback: 'days' });
  const hint = say('dose.sayOver2Days');
  if (dated === undefined) throw new Problem(say('ask.timeBetween'), { field: 'over', hint });
  if (dated > 0)
    return { value: dated, notes: ['time from the two dates; a date without an hour taken as noon'] };
  throw new Problem(say('dose.laterReadingNotAfter'), { field: 'now', hint });
}
