import { hazard } from '../../core/care/hazards.ts';
import { type Compound, compoundsFor } from '../../core/dosing/compound.ts';
import { amountG } from '../../core/dosing/dose.ts';
import type { DailyUse, Readings } from '../../core/dosing/use.ts';
import { mass, significant } from '../../core/quantity/format.ts';
import { meqLFromDkh, calciumWithAlkalinity } from '../../core/water/alkalinity.ts';
import { parameter, type ParameterId } from '../../core/water/parameter.ts';
import { answer, type Answer, type Fact } from '../answer.ts';
import type { AskedWater } from './asked.ts';

/** What the tank uses a day and what replaces it; what to do where the readings say nothing of it. */
export function useAnswer(
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
export function replacements(id: ParameterId, perDay: number, water: AskedWater): readonly Fact[] {
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

/** The sum behind a daily use; readings in the parameter's own unit. */
export function useWorking(
  id: ParameterId,
  { before, now, added, days, resolution }: Readings,
  use: DailyUse,
): readonly string[] {
  const { unit } = parameter(id);
  return [
    `(${significant(before, 4)} − ${significant(now, 4)} + ${significant(added, 3)}) / ${significant(days, 3)} days = ${significant(use.perDay, 3)} ${unit} a day`,
    `Each reading may be off by half of ${resolution} ${unit}, the difference by all of it: ± ${significant(resolution / days, 2)} a day`,
  ];
}
