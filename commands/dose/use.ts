import { z } from 'zod';
import { hazard } from '../../core/care/hazards.ts';
import { type Compound, compoundsFor } from '../../core/dosing/compound.ts';
import { amountG } from '../../core/dosing/dose.ts';
import { type DailyUse, dailyUse } from '../../core/dosing/use.ts';
import { Problem } from '../../core/problem.ts';
import { daysBetween, splitDate } from '../../core/quantity/dated.ts';
import { mass, significant } from '../../core/quantity/format.ts';
import { readAlike, readQuantity } from '../../core/quantity/read.ts';
import { meqLFromDkh, calciumWithAlkalinity } from '../../core/water/alkalinity.ts';
import { parameter, type ParameterId } from '../../core/water/parameter.ts';
import { answer, type Answer, type Fact } from '../answer.ts';
import { defineCommand } from '../command.ts';
import { quantityOption, textOption } from '../options.ts';
import { askedAdded } from './added.ts';
import { askedParameter, askedWater, asWritten, type AskedWater, inOwnUnit } from './asked.ts';
import { believable, plausible } from './change.ts';
import { retestFirst } from './no-dose.ts';

export const useCommand = defineCommand({
  path: ['dose', 'use'],
  summary: 'What the tank uses a day, from two readings and what was added between them',
  example: '/dose use of:alkalinity before:9.3 now:7.5 over:2 days volume:150 gal',
  options: z.strictObject({
    of: textOption('What was tested: alkalinity, calcium, ...', { suggest: 'parameter' }),
    before: textOption('The first reading, e.g. 9.3 dKH; with its date if you like: 9.3 on 2026-01-03'),
    now: textOption('The later reading, e.g. 7.5 dKH, or 7.5 on 2026-01-05 18:00'),
    over: quantityOption('days', 'Time between them where no dates are given: 2 days, 36 hours').optional(),
    amount: textOption(
      'Added in all that time or "a day": 20 g (say with what), or a rise: 1.2 dKH',
    ).optional(),
    with: textOption('The salt that was added', { suggest: 'compound' }).optional(),
    volume: quantityOption('volume', 'Net water of the whole system, e.g. 150 gal', 'volume').optional(),
  }),
  run: (input, { nowMs }) => {
    const id = askedParameter(input.of);
    const { kind, kitResolution } = parameter(id);
    const thisYear = new Date(nowMs).getUTCFullYear();
    const [first, later] = [
      splitDate(input.before, 'before', thisYear),
      splitDate(input.now, 'now', thisYear),
    ];
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
    const use = dailyUse({
      before: own(before.value),
      now: own(now.value),
      days: over.value,
      added: own(added.rise),
      resolution: kitResolution,
    });
    const read = [
      `${parameter(id).label} ${asWritten(id, before)}, then ${asWritten(id, now)}, ${significant(over.value, 3)} days apart`,
      ...new Set([...before.notes, ...now.notes, ...over.notes]),
      added.read,
      ...water.read,
    ];
    const doubted = [before, now].find(({ value }) => !believable(id, value));
    if (doubted !== undefined) return retestFirst(id, doubted.value, read);
    const working = [
      `(${significant(own(before.value), 4)} − ${significant(own(now.value), 4)} + ${significant(own(added.rise), 3)}) / ${significant(over.value, 3)} days = ${significant(use.perDay, 3)} ${parameter(id).unit} a day`,
      `Each reading may be off by half of ${kitResolution} ${parameter(id).unit}, the difference by all of it: ± ${significant(kitResolution / over.value, 2)} a day`,
    ];
    return useAnswer(id, use, water, read, working);
  },
});

/** The time between the readings, from their dates or from what was said. */
function askedTime(
  dated: number | undefined,
  over: string | undefined,
): { value: number; notes: readonly string[] } {
  if (over !== undefined) return readQuantity('days', over, { field: 'over', fallback: 'days' });
  const hint = 'Say over:2 days, or date both readings: before:9.3 on 2026-01-03 now:7.5 on 2026-01-05.';
  if (dated === undefined)
    throw new Problem('How much time lies between the two readings?', { field: 'over', hint });
  if (dated > 0)
    return { value: dated, notes: ['time from the two dates; a date without an hour taken as noon'] };
  throw new Problem('The later reading is not after the first.', { field: 'now', hint });
}

function useAnswer(
  id: ParameterId,
  use: DailyUse,
  water: AskedWater,
  read: readonly string[],
  working: readonly string[],
): Answer {
  const { label, unit } = parameter(id);
  const range = `${significant(Math.max(0, use.low), 3)} to ${significant(use.high, 3)} ${unit} a day`;
  const common = { read, working, sources: ['practice', 'iupac21'] as const };
  if (use.withinError) {
    return answer({
      ...common,
      headline: `No use to be seen yet: the change in ${label} is within the kit’s error (between 0 and ${significant(use.high, 2)} ${unit} a day).`,
      steps: [
        'Test again at the same hour in a few days with the same kit: the longer the time, the smaller the error.',
        'Change no dose on this.',
      ],
    });
  }
  if (use.perDay < 0) {
    return answer({
      ...common,
      headline: `${label} rose by ${significant(-use.perDay, 2)} ${unit} a day more than was added: something else adds it, or a reading is off.`,
      steps: [
        'Retest both with one kit.',
        'Look for another source: water changes, top-off, limewater, a reactor.',
        'Change no dose on this alone.',
      ],
    });
  }
  return answer({
    ...common,
    headline: `The tank uses about ${significant(use.perDay, 2)} ${unit} of ${label} a day (${range}, by the kit’s own error).`,
    facts: [...replacements(id, use.perDay, water), ...growth(id, use.perDay)],
    steps: [
      'To measure use, never stop dosing: test, keep dosing, test again, and add what was dosed.',
      'Start a daily dose at the low end of the range and retest after two or three days at the same hour.',
      'Two different kits differ by more than this range: use one kit for both readings.',
    ],
  });
}

/** Grams a day that replace the use, for each compound dosed for it. */
function replacements(id: ParameterId, perDay: number, water: AskedWater): readonly Fact[] {
  const rise = id === 'alkalinity' ? meqLFromDkh(perDay) : perDay;
  const forms = compoundsFor(id).filter(
    (compound: Compound) => hazard(compound.hazard).signal !== 'Danger' && compound.water !== 10,
  );
  return forms.map((form) => ({
    label: `${form.name} a day`,
    value: `${mass(amountG(form, id, rise, water.volumeL))} ${water.where}`,
  }));
}

/** Calcium that growth takes along with the alkalinity. */
function growth(id: ParameterId, perDay: number): readonly Fact[] {
  if (id !== 'alkalinity') return [];
  const calcium = calciumWithAlkalinity(meqLFromDkh(perDay));
  return [
    { label: 'Calcium used with it', value: `${significant(calcium, 2)} mg/L a day, if growth takes it all` },
  ];
}
