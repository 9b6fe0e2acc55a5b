import { fixed, inUnit, significant, toUnit } from '../../core/quantity/format.ts';
import { readQuantity, type Quantity } from '../../core/quantity/read.ts';
import { limitsOf, sideOf } from '../../core/water/limits.ts';
import { answer, type Answer } from '../answer.ts';

/** Units that meters show in parts per billion, and whether the unit itself says phosphorus. */
const PPB: Readonly<Record<string, boolean>> = { 'µg/L': false, 'ppb PO4': false, 'ppb P': true };

/** Phosphate in ppb by both ways the number can be meant, each judged; undefined for any other value. */
export function phosphorus({ kind, written, unit, notes }: Quantity): Answer | undefined {
  const saysP = kind === 'phosphate' ? PPB[unit] : undefined;
  if (saysP === undefined) return undefined;
  const [asP, asPo4] = (['ppb P', 'ppb PO4'] as const).map((as) =>
    readQuantity('phosphate', `${significant(written, 12)} ${as}`, { field: 'amount' }),
  ) as [Quantity, Quantity];
  const main = saysP ? asP : asPo4;
  const [low, high] = limitsOf('phosphate').usual;
  return answer({
    headline: `${significant(written)} ppb ${saysP ? 'P' : 'PO4'} is ${mgL(main)} phosphate: ${verdict(main)} (usual ${low} to ${high} mg/L).`,
    read: [
      saysP
        ? 'read P as phosphorus, as phosphorus meters show it'
        : 'read as ppb of phosphate (PO4); some meters show phosphorus (P) instead',
      ...notes,
    ],
    facts: [
      { label: 'if it is ppb P', value: both(asP), verdict: verdict(asP) },
      { label: 'if it is ppb PO4', value: both(asPo4), verdict: verdict(asPo4) },
      {
        label: 'as phosphorus',
        value: `${inUnit('phosphate', main.value, 'ppb P', 1)} = ${inUnit('phosphate', main.value, 'mg/L PO4-P', 4)}`,
      },
    ],
    steps: ['Look in the meter’s manual or on its display: does it show P or PO4?'],
    working: ['PO4 = P x 3.066 (94.97 / 30.97 g/mol)'],
    sources: ['iupac21', 'practice'],
  });
}

function mgL({ value }: Quantity): string {
  return inUnit('phosphate', value, 'mg/L', 3);
}

function both(read: Quantity): string {
  return `${fixed(toUnit('phosphate', read.value, 'ppb PO4'), 0)} ppb PO4 = ${mgL(read)} PO4`;
}

function verdict({ value }: Quantity): string {
  return sideOf(value, limitsOf('phosphate').usual) ?? 'fine';
}
