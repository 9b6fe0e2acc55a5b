import { type Compound, compoundsFor } from '../../core/dosing/compound.ts';
import { amountG } from '../../core/dosing/dose.ts';
import { ionNames, ionOf } from '../../core/dosing/ion.ts';
import { ionRises, phMove, salinityRisePpt } from '../../core/dosing/side-effects.ts';
import { fixed, significant } from '../../core/quantity/format.ts';
import { weighable } from '../../core/quantity/portion.ts';
import { meqLFromDkh } from '../../core/water/alkalinity.ts';
import type { ParameterId } from '../../core/water/parameter.ts';
import type { Fact } from '../answer.ts';

/** Smaller rises are left out of an answer, mg/L and ppt. */
const WORTH_SAYING = { mgL: 0.05, ppt: 0.005 } as const;

/** "chloride 124 mg/L; salinity about 0.2 ppt": what rises besides `id`; undefined when it is next to nothing. */
export function alsoAdds(
  compound: Compound,
  id: ParameterId,
  massG: number,
  volumeL: number,
  purity: number,
): Fact | undefined {
  const ions = ionRises(compound, massG, volumeL, purity)
    .filter(({ ion, riseMgL }) => ion !== ionOf[id] && riseMgL >= WORTH_SAYING.mgL)
    .map(({ ion, riseMgL }) => `${ionNames[ion]} ${significant(riseMgL, 2)} mg/L`);
  const ppt = salinityRisePpt(compound, massG, volumeL, purity);
  const all = ppt < WORTH_SAYING.ppt ? ions : [...ions, `salinity about ${significant(ppt, 1)} ppt`];
  return all.length === 0 ? undefined : { label: 'Also adds', value: all.join('; ') };
}

/** pH before and after a portion of alkalinity, before any gas exchange. `alkMeqL` undefined: 8 dKH is taken. */
export function phFact(compound: Compound, alkMeqL: number | undefined, riseMeqL: number): Fact {
  const { before, after } = phMove(compound, alkMeqL ?? meqLFromDkh(8), riseMeqL);
  const move = after - before;
  const sign = move < 0 ? '−' : '+';
  const taken = alkMeqL === undefined ? ', 8 dKH taken' : '';
  return {
    label: 'pH right after a day’s portion',
    value: `${sign}${fixed(Math.abs(move), 2)} before air evens it out (from pH ${fixed(before, 1)}, 35 ppt, 25 °C${taken})`,
  };
}

/** Where another salt does as well. Magnesium salts leave chloride or sulfate behind: a second mass would mislead. */
const swappable: ReadonlySet<ParameterId> = new Set(['alkalinity', 'nitrate', 'phosphate']);

/** The same rise from the other compounds dosed for it: "sodium bicarbonate 10.2 g". */
export function instead(
  used: readonly Compound[],
  id: ParameterId,
  rise: number,
  volumeL: number,
): Fact | undefined {
  if (!swappable.has(id)) return undefined;
  const others = compoundsFor(id).filter(
    (other) =>
      !used.includes(other) && other.hazard !== 'lime' && other.name !== 'sodium carbonate decahydrate',
  );
  const amounts = others.map((other) => `${other.name} ${weighable(amountG(other, id, rise, volumeL))}`);
  return amounts.length === 0 ? undefined : { label: 'Or, for the same rise', value: amounts.join('; ') };
}
