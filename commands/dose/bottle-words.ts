import { drawingStep, drawn, portions, portionWords, roundedDown } from '../../core/quantity/portion.ts';
import { limitsOf } from '../../core/water/limits.ts';
import type { ParameterId } from '../../core/water/parameter.ts';
import { inOwnUnit } from './asked.ts';

/** Litres of a solution as they are drawn up, rounded down: "51.4 mL". */
export function millilitres(litres: number): string {
  const ml = litres * 1000;
  const step = drawingStep(ml);
  return ml < step ? 'less than 0.01 mL (dilute it first)' : drawn(roundedDown(ml, step), step);
}

/** The same over days that keep to the pace of the parameter: `rise` (canonical) is what all of it makes. */
export function millilitresByDay(
  id: ParameterId,
  rise: number,
  litres: number,
): { readonly words: string; readonly days: number } {
  const most = limitsOf(id).pace?.up;
  const share = most === undefined ? 1 : Math.min(1, most / inOwnUnit(id, rise));
  const ml = litres * 1000;
  const plan = portions(ml, ml * share, drawingStep);
  if (plan === undefined) return { words: millilitres(litres), days: 1 };
  const show = (amount: number): string => drawn(amount, plan.step);
  if (plan.days === 1) return { words: show(plan.total), days: 1 };
  return { words: `${show(plan.total)} in all, ${portionWords(plan, show)},`, days: plan.days };
}

export const BOTTLE_CAUTIONS = [
  'The label of the product comes first, and its most a day. Never mix the calcium part and the alkalinity part together.',
];
