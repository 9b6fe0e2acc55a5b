import { inRange, Problem } from '../problem.ts';
import { parameter, type ParameterId } from '../water/parameter.ts';
import { say } from '../wording/say.ts';
import { type Compound, compoundMolarMass } from './compound.ts';
import { ionMolarMass, ionOf } from './ion.ts';

/** Litres a dose is worked out for; the upper end is a public aquarium. */
const VOLUME_L = { min: 0.01, max: 1e6 } as const;
/** The smallest share of pure salt taken seriously: below it the powder is something else. */
const PURITY_MIN = 0.01;

/**
 * What one gram of the pure compound supplies to a parameter: meq for alkalinity, mg for everything else; 0 where it
 * supplies none. Nitrate counts as NO3, phosphate as PO4, iodine as I.
 *
 * Computed from the formula with iupac21 weights. Check [reference mass fractions]: Ca in CaCl2·2H2O -> 272.625 mg/g;
 * Mg in MgSO4·7H2O -> 98.614; NaHCO3 -> 11.9039 meq/g; Na2CO3 -> 18.8702 meq/g. Doubt: none but the purity.
 */
export function supplyPerG(compound: Compound, id: ParameterId): number {
  const mmolPerG = 1000 / compoundMolarMass(compound);
  if (id === 'alkalinity') return mmolPerG * compound.alkEqPerMol;
  const ion = ionOf[id];
  return ion === undefined ? 0 : mmolPerG * (compound.ions[ion] ?? 0) * ionMolarMass(ion);
}

/**
 * Grams of a compound that raise a parameter by `rise` (meq/L for alkalinity, mg/L for the rest, 0 or more) in
 * `volumeL` of water. `purityShare` is grams of pure salt per gram of powder, 0.01 to 1.
 *
 * Check [computed from iupac21]: NaHCO3, 1 dKH, 100 L -> 2.9961 g; Na2CO3 -> 1.8900 g; CaCl2·2H2O, 10 mg/L Ca, 100 L ->
 * 3.6680 g. Doubt: the volume, always; damp powder.
 *
 * @throws Problem outside the ranges, or when the compound does not supply that parameter.
 */
export function amountG(
  compound: Compound,
  id: ParameterId,
  rise: number,
  volumeL: number,
  purityShare = 1,
): number {
  const checked = inRange('rise', rise, 0, 1e6, '');
  return (checked * checkedVolume(volumeL)) / (supplied(compound, id) * checkedPurity(purityShare));
}

/**
 * The rise (meq/L for alkalinity, mg/L for the rest) that `massG` grams make in `volumeL`: the inverse of `amountG`.
 *
 * @throws Problem as `amountG`; `massG` 0 to 1e6.
 */
export function riseFrom(
  compound: Compound,
  id: ParameterId,
  massG: number,
  volumeL: number,
  purityShare = 1,
): number {
  const checked = inRange('amount', massG, 0, 1e6, 'g');
  return (checked * supplied(compound, id) * checkedPurity(purityShare)) / checkedVolume(volumeL);
}

function supplied(compound: Compound, id: ParameterId): number {
  const perG = supplyPerG(compound, id);
  if (perG > 0) return perG;
  throw new Problem(say('dose.doesNotRaise', { salt: compound.name, parameter: parameter(id).label }), {
    field: 'with',
    given: compound.name,
  });
}

function checkedVolume(volumeL: number): number {
  return inRange('volume', volumeL, VOLUME_L.min, VOLUME_L.max, 'L');
}

function checkedPurity(purityShare: number): number {
  return inRange('purity', purityShare * 100, PURITY_MIN * 100, 100, '%') / 100;
}
