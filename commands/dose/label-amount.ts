import { Problem } from '../../core/problem.ts';
import { fixed } from '../../core/quantity/format.ts';
import { drawingStep, drawn, roundedDown, weighable } from '../../core/quantity/portion.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { say } from '../../core/wording/say.ts';

/** An amount of a label, and how such amounts are printed: rounded down to what is drawn up, weighed or counted. */
export interface LabelAmount {
  readonly value: number;
  readonly show: (amount: number) => string;
  readonly notes: readonly string[];
}

const DROPS = /^(\d{1,4}(?:[.,]\d{1,2})?)\s*drops?$/i;

/**
 * Reads "5 mL", "2 drops", "1 g", "1 tsp".
 *
 * @throws Problem for anything else, or for nothing.
 */
export function labelAmount(text: string): LabelAmount {
  const [, count] = DROPS.exec(text.trim()) ?? [];
  const read =
    count === undefined ? measured(text) : { value: Number(count.replace(',', '.')), show: drops, notes: [] };
  if (read.value > 0) return read;
  throw new Problem(say('dose.labelAmountAbove0'), { field: 'amount', given: text });
}

function measured(text: string): LabelAmount {
  const grams = weighed(text);
  if (grams !== undefined) return grams;
  const { value, notes } = readQuantity('volume', text, { field: 'amount' });
  return { value: value * 1000, show: millilitres, notes };
}

/** Undefined where the text names no unit of mass, or one that it may share with a volume. */
function weighed(text: string): LabelAmount | undefined {
  try {
    const { value, notes } = readQuantity('mass', text, { field: 'amount' });
    return { value, show: weighable, notes };
  } catch (error) {
    if (error instanceof Problem && error.choices.length === 0) return undefined;
    throw error;
  }
}

function drops(count: number): string {
  if (count < 1) return 'less than a drop (dilute it first, as its label says)';
  const whole = Math.floor(count + 1e-9);
  return `${fixed(whole, 0)} ${whole === 1 ? 'drop' : 'drops'}`;
}

function millilitres(ml: number): string {
  const step = drawingStep(ml);
  return ml < step
    ? 'less than 0.01 mL (dilute it first, as its label says)'
    : drawn(roundedDown(ml, step), step);
}
