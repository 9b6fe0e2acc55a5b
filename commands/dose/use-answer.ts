import { hazard } from '../../core/care/hazards.ts';
import { type Compound, compoundsFor } from '../../core/dosing/compound.ts';
import { amountG } from '../../core/dosing/dose.ts';
import { fixed, significant } from '../../core/quantity/format.ts';
import { weighable } from '../../core/quantity/portion.ts';
import type { Use } from '../../core/trend/use.ts';
import { sizeFigures } from '../../core/trend/words.ts';
import { meqLFromDkh, calciumWithAlkalinity } from '../../core/water/alkalinity.ts';
import { parameter, type ParameterId } from '../../core/water/parameter.ts';
import { answer, type Answer, type Fact } from '../answer.ts';
import type { AskedWater } from './asked.ts';
import { limitsOf } from '../../core/water/limits.ts';

/** A use of more than so many days' safest rise is a slip of time or unit. Own choice. */
const MOST_PACES = 5;

/** Whether a level cannot move so far in a day by what a tank uses or makes; in the parameter's own unit. */
export function moreThanAnyTank(id: ParameterId, perDay: number): boolean {
  const { pace } = limitsOf(id);
  return pace !== undefined && Math.abs(perDay) > MOST_PACES * pace.down;
}

/** What the tank uses a day and what replaces it; what to do where the readings say nothing of it. */
export function useAnswer(
  id: ParameterId,
  use: Use,
  water: AskedWater,
  read: readonly string[],
  working: readonly string[],
): Answer {
  const { label, unit } = parameter(id);
  const { best, from, to } = figuresOf(use);
  const by = use.kitOnly
    ? 'by the kit’s own error'
    : '95 %, by the scatter of the readings and the kit’s own error';
  const common = { read, working, sources: ['practice', 'iupac21'] as const };
  if (use.withinError) {
    return answer({
      ...common,
      headline: `No use to be seen yet: the change in ${label} is within the kit’s error (between 0 and ${significant(Math.max(0, use.high), 2)} ${unit} a day).`,
      steps: [
        'Test again at the same hour in a few days with the same kit: the longer the time, the smaller the error.',
        'Change no dose on this.',
      ],
    });
  }
  if (moreThanAnyTank(id, use.perDay)) {
    const moved = use.perDay > 0 ? `the tank would use` : `${label} would rise by itself by`;
    return answer({
      ...common,
      headline: `Retest first: by these readings ${moved} about ${significant(Math.abs(use.perDay), 2)} ${unit} a day, more than any tank does.`,
      steps: [
        'Look at the time between the readings, the unit of each and what was added.',
        'Test both again with one kit before you change a dose.',
      ],
    });
  }
  if (use.perDay < 0) {
    return answer({
      ...common,
      headline: `${label} rose by ${best} ${unit} a day (${from} to ${to}) more than was added: something else adds it, or a reading is off.`,
      steps: [
        'Retest both with one kit.',
        'Look for another source: water changes, top-off, limewater, a reactor.',
        'Change no dose on this alone.',
      ],
    });
  }
  return answer({
    ...common,
    headline: `The tank uses about ${best} ${unit} of ${label} a day (${from} to ${to} ${unit} a day, ${by}).`,
    facts: [...replacements(id, Number(best), water), ...growth(id, Number(best))],
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
    value: `${weighable(amountG(form, id, rise, water.volumeL))} ${water.where}`,
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

/** The use and its range to the same digits, so that a printed middle lies in its printed range. */
function figuresOf({ line }: Use): { readonly best: string; readonly from: string; readonly to: string } {
  const { best, from, to } = sizeFigures(line, { word: 'a day', days: 1 });
  return { best: short(best), from: short(from), to: short(to) };
}

/** "0.90" -> "0.9". */
function short(text: string): string {
  return fixed(Number(text), 8);
}

/** Two readings and what was added between them, in the parameter's own unit. */
interface Pair {
  readonly before: number;
  readonly now: number;
}

/** The sum behind a daily use: of two readings, or of many. */
export function useWorking(id: ParameterId, use: Use, pair: Pair | undefined): readonly string[] {
  const { unit, kitResolution } = parameter(id);
  const { days, added, perDay, count } = use;
  const kit = `Each reading may be off by half of ${kitResolution} ${unit}, the difference by all of it: ± ${significant(kitResolution / days, 2)} a day`;
  if (pair === undefined)
    return [
      `Everything added (${significant(added, 3)} ${unit}) is taken off the later readings; the use is the median of the slopes of all pairs of ${count} readings: ${significant(perDay, 3)} ${unit} a day`,
      kit,
    ];
  return [
    `(${significant(pair.before, 4)} − ${significant(pair.now, 4)} + ${significant(added, 3)}) / ${significant(days, 3)} days = ${significant(perDay, 3)} ${unit} a day`,
    kit,
  ];
}
