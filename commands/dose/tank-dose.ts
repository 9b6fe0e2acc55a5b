import type { Compound } from '../../core/dosing/compound.ts';
import { volume } from '../../core/quantity/format.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { limitsOf } from '../../core/water/limits.ts';
import { parameter, type ParameterId } from '../../core/water/parameter.ts';
import { shown } from './asked.ts';
import { doseOfStock } from './stock.ts';

/** A rise (canonical) that a solution of `gL` grams in a litre shall make. */
export interface StockRise {
  readonly compound: Compound;
  readonly id: ParameterId;
  readonly rise: number;
  readonly gL: number;
  readonly purity: number;
}

/** The millilitres of a solution for a whole tank, as the first words of an answer and its first step. */
export function tankDose(
  { compound, id, rise, gL, purity }: StockRise,
  tank: string,
): { readonly first: string; readonly steps: readonly string[]; readonly read: readonly string[] } {
  const { value: tankL, notes } = readQuantity('volume', tank, { field: 'tank' });
  const { unit, label } = parameter(id);
  const { pace } = limitsOf(id);
  const { all, daily, isMeasured } = doseOfStock(compound, id, rise, gL, purity, tankL);
  const often = daily === undefined ? '' : `, ${daily},`;
  return {
    first: isMeasured
      ? `${all} of that solution${often} moves ${label} up by ${shown(id, rise)} in ${volume(tankL)}.`
      : `${label} up by ${shown(id, rise)} in ${volume(tankL)} would take ${all}.`,
    steps:
      pace === undefined
        ? []
        : [`At most ${pace.up} ${unit} a day (common practice), in several parts; retest before more.`],
    read: notes,
  };
}
