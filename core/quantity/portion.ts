import { inRange, Problem } from '../problem.ts';
import { say } from '../wording/say.ts';
import { fixed } from './format.ts';

/**
 * A sum measured out over days: `each` on every day but the last, which may be smaller. All are whole multiples of
 * `step`, so that (days - 1) x each + last is the total to the last digit printed.
 */
export interface Portions {
  readonly days: number;
  readonly each: number;
  readonly last: number;
  readonly total: number;
  readonly step: number;
}

/** From how much on a step is measured in: the first row whose `from` is reached. */
type Steps = readonly (readonly [from: number, step: number])[];

/**
 * What is weighed, g: 1 g on a kitchen scale from 100 g, 0.1 g from 5 g, 0.01 g on a pocket balance below. Under 0.1 g a
 * stock solution is drawn up instead, of 1 g and then 0.1 g per litre (solution.ts). Common practice, no source.
 */
const weighedG: Steps = [
  [100, 1],
  [5, 0.1],
  [0.1, 0.01],
  [0.01, 0.0001],
  [0.001, 0.00001],
  [0, 0.000001],
];

/** What is drawn up or poured from a bottle, mL: a 1 mL syringe by 0.01 mL, a larger one, a cylinder. Common practice. */
const drawnMl: Steps = [
  [1000, 10],
  [100, 1],
  [5, 0.1],
  [0, 0.01],
];

const MOST_DAYS = 365;
/** All days are made equal where that takes no more than this off the total: nobody sees half a per cent. Own choice. */
const NEAR = 0.995;
/** Keeps 0.3 / 0.1 and 2.0000000001 days from being a step or a day off. */
const SLACK = 1e-9;

export const weighingStep = (massG: number): number => stepOf(weighedG, massG);
export const drawingStep = (volumeMl: number): number => stepOf(drawnMl, volumeMl);

/** A step of three figures: 12.34 -> 0.1. What water is poured by, litres or gallons: common practice, no source. */
export function threeFigures(amount: number): number {
  return amount > 0 ? 10 ** Math.max(-6, Math.floor(Math.log10(amount) + SLACK) - 2) : 1e-6;
}

function stepOf(steps: Steps, amount: number): number {
  return steps.find(([from]) => amount >= from * (1 - SLACK))?.[1] ?? 1;
}

/** The largest multiple of `step` that is not above `amount`: 3.46 by 0.1 -> 3.4. */
export function roundedDown(amount: number, step: number): number {
  return multiple(wholeSteps(amount, step), step);
}

/**
 * `total` over the fewest days of at most `mostADay`, in portions as equal as the step allows and none above
 * `mostADay`. Everything is rounded down: a dose ends a little low, never high.
 *
 * `stepFor` gives the step of a portion. Check: 6.44 at 5.37 a day by 0.1 -> 3.2 and 3.2, 6.4 in all; 10 at 3.4 by
 * 0.1 -> 3.4, 3.4, 3.2; 633.2 at 316.6 by 1 -> 316 twice, 632 in all.
 *
 * @returns undefined where even a whole portion is less than one step.
 * @throws Problem for a pace that is not above 0, or a total that would take more than 365 days.
 */
export function portions(
  total: number,
  mostADay: number,
  stepFor: (portion: number) => number,
): Portions | undefined {
  if (!(mostADay > 0)) throw new Problem(say('dose.paceAboveNone'), { field: 'pace' });
  const share = inRange('time', Number((total / mostADay).toFixed(6)), 0, MOST_DAYS, 'days at that pace');
  const days = Math.ceil(share - SLACK);
  const step = stepFor(Math.min(total, mostADay));
  const most = wholeSteps(mostADay, step);
  const all = Math.min(wholeSteps(total, step), days * most);
  if (all < 1) return undefined;
  const even = Math.floor(all / days);
  if (even * days >= all * NEAR)
    return { ...equal(even, step), days, total: multiple(even * days, step), step };
  const each = Math.ceil(all / days);
  const needed = Math.ceil(all / each);
  return {
    days: needed,
    each: multiple(each, step),
    last: multiple(all - (needed - 1) * each, step),
    total: multiple(all, step),
    step,
  };
}

function equal(steps: number, step: number): { readonly each: number; readonly last: number } {
  return { each: multiple(steps, step), last: multiple(steps, step) };
}

/** "3.2 g a day for 2 days", "3.4 g a day for 2 days, then 3.2 g on day 3", "3.3 g on day 1 and 3.2 g on day 2". */
export function portionWords({ days, each, last }: Portions, show: (amount: number) => string): string {
  if (days === 1) return `${show(each)} in one day`;
  if (show(each) === show(last)) return `${show(each)} a day for ${days} days`;
  if (days === 2) return `${show(each)} on day 1 and ${show(last)} on day 2`;
  return `${show(each)} a day for ${days - 1} days, then ${show(last)} on day ${days}`;
}

/** An amount in g with the digits of its step: "633 g", "3.2 g", "8.6 mg", "1.234 kg". */
export function weighed(massG: number, step: number): string {
  if (step < 0.01) return `${fixed(massG * 1000, decimalsOf(step * 1000))} mg`;
  if (massG >= 1000) return `${fixed(massG / 1000, decimalsOf(step / 1000))} kg`;
  return `${fixed(massG, decimalsOf(step))} g`;
}

/** An amount in mL with the digits of its step: "8.6 mL", "1.25 L". */
export function drawn(volumeMl: number, step: number): string {
  return step >= 10 ? `${fixed(volumeMl / 1000, 2)} L` : `${fixed(volumeMl, decimalsOf(step))} mL`;
}

/** A single mass, rounded down to what is weighed. */
export function weighable(massG: number): string {
  const step = weighingStep(massG);
  return weighed(roundedDown(massG, step), step);
}

/** Digits behind the point that show every multiple of a step. */
export function decimalsOf(step: number): number {
  return Math.max(0, -Math.floor(Math.log10(step) + SLACK));
}

function wholeSteps(amount: number, step: number): number {
  return Math.floor((amount / step) * (1 + 1e-12) + SLACK);
}

function multiple(count: number, step: number): number {
  return Number((count * step).toFixed(decimalsOf(step)));
}
