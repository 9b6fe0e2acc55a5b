import { type Compound, compoundMolarMass } from '../../core/dosing/compound.ts';
import { amountG, supplyPerG } from '../../core/dosing/dose.ts';
import { ionMolarMass, ionNames, ionOf } from '../../core/dosing/ion.ts';
import { mass, significant, volume } from '../../core/quantity/format.ts';
import { meqLFromDkh } from '../../core/water/alkalinity.ts';
import { parameter, type ParameterId } from '../../core/water/parameter.ts';
import { inOwnUnit, shown } from './asked.ts';
import type { Change } from './change.ts';

/** How the grams of one compound come about, line by line. */
export function amountWorking(
  compound: Compound,
  id: ParameterId,
  change: Change,
  volumeL: number,
  purity: number,
): readonly string[] {
  const { now, goal, rise } = change;
  const difference =
    now === undefined || goal === undefined
      ? shown(id, rise)
      : `${significant(inOwnUnit(id, goal), 4)} − ${significant(inOwnUnit(id, now), 4)} = ${shown(id, rise)}`;
  const massG = amountG(compound, id, rise, volumeL, purity);
  const share = purity === 1 ? '' : ` / ${significant(purity, 3)} pure`;
  const needed = id === 'alkalinity' ? alkalinityNeed(rise, volumeL) : ionNeed(id, rise, volumeL);
  const perG = supplyPerG(compound, id);
  const amount = rise * volumeL;
  const end =
    id === 'alkalinity'
      ? `${significant(amount, 4)} meq / ${significant(perG, 4)} meq per g${share} = ${significant(massG, 3)} g`
      : `${mass(amount / 1000)} / ${significant(perG / 1000, 4)}${share} = ${mass(massG)}`;
  return [`Rise: ${difference}`, needed, supplyLine(compound, id), end, ruleLine(compound, id, purity)];
}

function alkalinityNeed(riseMeqL: number, volumeL: number): string {
  return `${shown('alkalinity', riseMeqL)} = ${significant(riseMeqL, 4)} meq/L; × ${volume(volumeL)} = ${significant(riseMeqL * volumeL, 4)} meq`;
}

function ionNeed(id: ParameterId, riseMgL: number, volumeL: number): string {
  return `${significant(riseMgL, 4)} mg/L × ${volume(volumeL)} = ${mass((riseMgL * volumeL) / 1000)} of ${parameter(id).label}`;
}

/** What a gram of the compound holds: "NaHCO3: 84.01 g/mol with 1 eq, so 11.9 meq per g". */
export function supplyLine(compound: Compound, id: ParameterId): string {
  const { formula, alkEqPerMol } = compound;
  const molar = significant(compoundMolarMass(compound), 5);
  const perG = supplyPerG(compound, id);
  if (id === 'alkalinity')
    return `${formula}: ${molar} g/mol with ${alkEqPerMol} eq, so ${significant(perG, 4)} meq per g`;
  const ion = ionOf[id];
  if (ion === undefined) throw new Error(`${id} has no ion`);
  return `${formula}: ${molar} g/mol with ${significant(ionMolarMass(ion), 5)} g of ${ionNames[ion]}, so ${significant(perG / 10, 4)} % by mass`;
}

/** The rule to keep: "1.890 g per dKH per 100 L". */
function ruleLine(compound: Compound, id: ParameterId, purity: number): string {
  const one = id === 'alkalinity' ? meqLFromDkh(1) : (RULE_STEP[id] ?? 1);
  const step = id === 'alkalinity' ? 'dKH' : `${RULE_STEP[id] ?? 1} ${parameter(id).unit}`;
  const each = amountG(compound, id, one, 100, purity);
  return `The rule: ${each.toPrecision(4)} g per ${step} per 100 L`;
}

const RULE_STEP: Partial<Record<ParameterId, number>> = { calcium: 10, magnesium: 10, potassium: 10 };

/** "1.2 dKH, at most 1 dKH a day: 2 days of at most 0.6 dKH"; `perDay` is the rise of a full portion. */
export function paceLine(
  id: ParameterId,
  change: Change,
  days: number,
  perDay: number,
  words: string,
): string {
  const each = days === 1 ? '1 day' : `${days} days of at most ${shown(id, perDay)}`;
  return `Pace: ${shown(id, change.rise)}, ${words}: ${each}, rounded down to what a balance shows`;
}
