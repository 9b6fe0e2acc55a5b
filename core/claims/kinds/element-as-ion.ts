import { significant } from '../../quantity/format.ts';
import { readQuantity } from '../../quantity/read.ts';
import type { Judge } from '../claim.ts';
import type { Amount, Stated } from '../stated.ts';
import { termsIn } from '../terms.ts';
import { againstNumber } from '../verdict.ts';

/** The element and the ion, with the unit each is read in. PO4 / P = 94.97 / 30.97, NO3 / N = 62.00 / 14.01 (iupac21). */
const PAIRS = [
  {
    kind: 'phosphate',
    element: ['phosphorus', 'po4-p', 'p'],
    ion: ['phosphate', 'phosphates', 'po4'],
    name: 'phosphorus',
    unit: 'P',
    other: 'PO4',
  },
  {
    kind: 'nitrate',
    element: ['nitrate nitrogen', 'nitrate-nitrogen', 'nitrate-n', 'no3-n', 'nitrogen'],
    ion: ['nitrate', 'nitrates', 'no3'],
    name: 'nitrate nitrogen',
    unit: 'NO3-N',
    other: 'NO3',
  },
] as const;

/** "0.1 ppm phosphorus is 0.3 phosphate", "5 ppm nitrate nitrogen is 22 ppm nitrate", in either order, the name before or behind. */
export const elementAsIon: Judge = (stated) => {
  const [first, second, other] = stated.amounts;
  if (first === undefined || second === undefined || other !== undefined) return undefined;
  for (const { kind, element, ion, name, unit, other: ionUnit } of PAIRS) {
    const isElement = [first, second].map((amount) => isOf(stated, amount, element));
    const isIon = [first, second].map((amount) => isOf(stated, amount, ion));
    const at = isElement.findIndex(
      (yes, index) => yes && isIon[1 - index] === true && isElement[1 - index] !== true,
    );
    if (at < 0) continue;
    const [left, right] = [perLitre(first, first), perLitre(second, first)];
    const [asElement, asIon] = at === 0 ? [left, right] : [right, left];
    const real = readQuantity(kind, `${asElement} ${unit}`, { field: 'rule' }).value;
    const claimed = readQuantity(kind, `${asIon} ${ionUnit}`, { field: 'rule' }).value;
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

/** Whether an amount is of one of these: by its unit, by the name right behind it, or by the one before it. */
function isOf(stated: Stated, { text, start, end }: Amount, names: readonly string[]): boolean {
  const unit = text.split(' ').slice(2).join(' ');
  const terms = termsIn(stated, names);
  const behind = terms.some((term) => term.start >= end && isNear(stated, end, term.start));
  const before = terms.some((term) => term.end <= start && isNear(stated, term.end, start));
  return names.includes(unit) || behind || (unit === '' && before);
}

/** Nothing but "of" between two places. */
function isNear({ words }: Stated, from: number, to: number): boolean {
  return words.every(
    ({ token }) => token.end <= from || token.start >= to || token.word === 'of' || token.word === 'at',
  );
}

/** "0.1 ppm": a number in the unit of mass per litre that it has, or that the first has. */
function perLitre(amount: Amount, first: Amount): string {
  return `${amount.value} ${unitOf(amount) ?? unitOf(first) ?? 'ppm'}`;
}

function unitOf({ text }: Amount): string | undefined {
  return text.split(' ')[1];
}
