import { significant } from '../../quantity/format.ts';
import { readQuantity } from '../../quantity/read.ts';
import type { Recogniser } from '../claim.ts';
import { IS, NUM } from '../rule-text.ts';
import { againstNumber } from '../verdict.ts';

const UNIT = String.raw`\s*(ppm|ppb|mg\/l|µg\/l)?\s*(?:of\s+)?`;
const PHOSPHORUS = String.raw`(?:phosphorus|po4-p|p)`;
const PHOSPHATE = String.raw`(?:phosphates?|po4)`;
const NITROGEN = String.raw`(?:nitrate[- ]nitrogen|nitrate-n|no3-n|nitrogen)`;
const NITRATE = String.raw`(?:nitrates?|no3)`;

/** The element and the ion, with the unit each is read in. PO4 / P = 94.97 / 30.97, NO3 / N = 62.00 / 14.01 (iupac21). */
const PAIRS = [
  { kind: 'phosphate', element: PHOSPHORUS, ion: PHOSPHATE, name: 'phosphorus', unit: 'P', other: 'PO4' },
  { kind: 'nitrate', element: NITROGEN, ion: NITRATE, name: 'nitrate nitrogen', unit: 'NO3-N', other: 'NO3' },
] as const;

/** "0.1 ppm phosphorus is 0.3 phosphate", "5 ppm nitrate nitrogen is 22 ppm nitrate", in either order, the name before or behind. */
export const elementAsIon: Recogniser = ({ text }) => {
  for (const { kind, element, ion, name, unit, other } of PAIRS) {
    const straight = new RegExp(`${NUM}${UNIT}${element}${IS}${NUM}${UNIT}${ion}\\b`).exec(text);
    const turned =
      new RegExp(`${NUM}${UNIT}${ion}${IS}${NUM}${UNIT}${element}\\b`).exec(text) ??
      new RegExp(`${ion}\\s*(?:of|at)?\\s*${NUM}${UNIT}${IS}${NUM}${UNIT}${element}\\b`).exec(text);
    const found = straight ?? turned;
    if (found === null) continue;
    const [, n1 = '', u1 = 'ppm', n2 = '', u2 = u1] = found;
    const [asElement, asIon] =
      straight === null ? [`${n2} ${u2}`, `${n1} ${u1}`] : [`${n1} ${u1}`, `${n2} ${u2}`];
    const real = readQuantity(kind, `${asElement} ${unit}`, { field: 'rule' }).value;
    const claimed = readQuantity(kind, `${asIon} ${other}`, { field: 'rule' }).value;
    if (real <= 0 || claimed <= 0) return undefined;
    return {
      kind: 'element and ion',
      rule: `${asElement} of ${name} is ${asIon} of ${kind}`,
      verdict: againstNumber(claimed, real),
      figure: `${asElement} of ${name} is ${significant(real, 3)} mg/L of ${kind}`,
      working: [
        kind === 'phosphate'
          ? 'PO4 = P x 3.066 (94.97 / 30.97 g/mol)'
          : 'NO3 = N x 4.427 (62.00 / 14.01 g/mol)',
      ],
      steps: [`Look whether your meter shows ${name} or ${kind} before you compare two readings.`],
      sources: ['iupac21'],
    };
  }
  return undefined;
};
