import { fixed, inUnit, significant } from '../../core/quantity/format.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { is } from '../../core/words/mention.ts';
import { answer } from '../answer.ts';
import { type Intent } from './intent.ts';
import { limitsOf } from '../../core/water/limits.ts';

/** "meter says 18 ppb P": as phosphate, in both ways the number can be meant. */
export const ppbIntent: Intent = (heard) => {
  const mention = heard.mentions.find((m) => is(m, 'phosphate') && /ppb|µg/.test(m.text));
  if (mention === undefined || heard.said.length > 1) return undefined;
  const asP = readQuantity('phosphate', `${mention.value} ppb P`, { field: 'amount' });
  const asPo4 = readQuantity('phosphate', `${mention.value} ppb PO4`, { field: 'amount' });
  const saysP =
    /\bp$|phosphorus$/.test(mention.text) ||
    /^\s*(?:of\s+)?(?:phosphorus|p)\b/.test(heard.text.slice(mention.end));
  const { usual: target } = limitsOf('phosphate');
  const main = saysP ? asP : asPo4;
  const range = `${target[0]} to ${target[1]} mg/L`;
  const verdict = (value: number): string => {
    if (value < target[0]) return 'low';
    return value > target[1] ? 'high' : 'fine';
  };
  return answer({
    headline: `${significant(mention.value)} ppb ${saysP ? 'P' : 'PO4'} is ${inUnit('phosphate', main.value, 'mg/L', 3)} phosphate: ${verdict(main.value)} (usual ${range}).`,
    read: [
      saysP
        ? 'read P as phosphorus, as phosphorus meters show it'
        : 'read as ppb of phosphate (PO4); some meters show phosphorus (P) instead',
    ],
    facts: [
      {
        label: 'if it is ppb P',
        value: `${fixed(asP.value * 1000, 0)} ppb PO4 = ${inUnit('phosphate', asP.value, 'mg/L', 3)} PO4`,
        verdict: verdict(asP.value),
      },
      {
        label: 'if it is ppb PO4',
        value: `${fixed(asPo4.value * 1000, 0)} ppb PO4 = ${inUnit('phosphate', asPo4.value, 'mg/L', 3)} PO4`,
        verdict: verdict(asPo4.value),
      },
    ],
    steps: ['Look in the meter’s manual or on its display: does it show P or PO4?'],
    working: ['PO4 = P x 3.066 (94.97 / 30.97 g/mol)'],
    sources: ['iupac21', 'practice'],
  });
};
