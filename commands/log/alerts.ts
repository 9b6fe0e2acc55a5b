import { printed, printedChange } from '../../core/log/value.ts';
import { fastMoves } from '../../core/trend/pace.ts';
import { parameter } from '../../core/water/parameter.ts';
import type { Keep, LoggedValue, Reading, Tank } from '../keep.ts';
import { spanWords } from './words.ts';
import { limitsOf } from '../../core/water/limits.ts';

/** How many earlier readings of a parameter are looked at: more than anybody tests in a day. */
const LOOK_BACK = 50;

/** A value with the reading before it and a sentence where it moved too fast. */
export interface Changed {
  readonly value: LoggedValue;
  readonly before: Reading | undefined;
  readonly alert: string | undefined;
}

/** Compares values tested at `atMs` with what was logged before; call it before they are logged themselves. */
export function changesOf(
  keep: Keep,
  tank: Tank,
  values: readonly LoggedValue[],
  atMs: number,
): readonly Changed[] {
  return values.map((value) => {
    const earlier = keep.readings(tank.id, { parameter: value.parameter, toMs: atMs, most: LOOK_BACK });
    return { value, before: earlier.at(-1), alert: alertFor(value, atMs, earlier, tank) };
  });
}

/** "−1.8 dKH in 2 days", or that it is the first. */
export function changeWords({ value, before }: Changed, atMs: number, tank: Tank): string {
  if (before === undefined) return 'the first one logged';
  const change = printedChange(value.parameter, before.value, value.value, tank.units);
  const within =
    Math.abs(value.value - before.value) <= parameter(value.parameter).kitResolution * (1 + 1e-9) &&
    before.value !== value.value
      ? ', within the test’s error'
      : '';
  return `${change} in ${spanWords(atMs - before.atMs)}${within}`;
}

/** The sentence for a value that moved faster than is usual, by the readings before it; undefined where it did not. */
export function alertFor(
  { parameter: id, value }: LoggedValue,
  atMs: number,
  earlier: readonly Reading[],
  { units }: Tank,
): string | undefined {
  const { label, unit, kitResolution } = parameter(id);
  const { pace } = limitsOf(id);
  if (pace === undefined) return undefined;
  const now = { atMs, value };
  const move = fastMoves([...earlier, now], pace, kitResolution).find(({ to }) => to === now);
  if (move === undefined) return undefined;
  const [way, usual] = move.change > 0 ? ['rose', pace.up] : ['fell', pace.down];
  const size = printedChange(id, move.from.value, value, units).replace(/^[+−]/, '');
  const doubt = move.sure ? '' : ' The test’s error may be part of it.';
  return `${label} ${way} by ${size} in ${spanWords(atMs - move.from.atMs)} (from ${printed(id, move.from.value, units)}): more than the usual ${usual} ${unit} a day.${doubt} Test again before you correct anything. I only see what is logged.`;
}
