import { readQuantity } from '../quantity/read.ts';
import type { Said } from './said.ts';

/** The strength of a solution as text; of a powder and the water it was made up to, their quotient: "10 g/l". */
export function strengthText(strengths: readonly Said[]): string {
  const grams = strengths.find(({ number }) => number.kinds.includes('mass'));
  const water = strengths.find((one) => one !== grams && one.number.kinds.includes('volume'));
  const molar = strengths.find(({ number: { kinds, unit } }) => kinds.includes('molar') || unit === 'm');
  if (molar !== undefined) return `${molar.number.number} molar`;
  if (grams === undefined || water === undefined) return strengths[0]?.text ?? '';
  const litres = readQuantity('volume', water.text, { field: 'strength' }).value;
  const gL = readQuantity('mass', grams.text, { field: 'strength' }).value / litres;
  return `${Number(gL.toPrecision(6))} g/l`;
}
