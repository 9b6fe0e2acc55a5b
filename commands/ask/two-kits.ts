import { fixed, inUnit } from '../../core/quantity/format.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { answer } from '../answer.ts';
import { says, type Intent } from './intent.ts';

/** Kits that disagree by more than this share of their mean are not two readings of one number. */
const AGREE_SHARE = 0.15;

/** "one kit 180, other 240, both ppm": alkalinity by two kits, in one unit, and whether they agree. */
export const twoKitsIntent: Intent = (heard) => {
  if (!says(heard, 'kits?', 'tests', 'testers?', 'checkers?') || !heard.parameters.includes('alkalinity'))
    return undefined;
  const [first, second] = heard.said.filter(
    ({ parameter: id, role }) => id === 'alkalinity' && role !== 'goal',
  );
  if (first === undefined || second === undefined) return undefined;
  const ppm = says(heard, 'ppm', 'mg/l') ? 'ppm CaCO3' : undefined;
  const readings = [first, second].map(({ mention }) =>
    readQuantity('alkalinity', mention.text, { field: 'alkalinity', fallback: ppm }),
  );
  const [a, b] = readings.map(({ value }) => value);
  if (a === undefined || b === undefined || a <= 0 || b <= 0) return undefined;
  const gap = Math.abs(a - b) / ((a + b) / 2);
  const each = readings.map(
    (r) =>
      `${fixed(r.written, 1)} ${r.unit} = ${inUnit('alkalinity', r.value, 'meq/L', 2)} = ${inUnit('alkalinity', r.value, 'dKH', 1)}`,
  );
  const apart = `${fixed((100 * Math.abs(a - b)) / Math.min(a, b), 0)} % apart`;
  return answer({
    headline:
      gap > AGREE_SHARE
        ? `The kits disagree: ${each.join('; ')}, ${apart}. Dose nothing until you know which is right.`
        : `${each.join('; ')}: ${apart}, which is within what kits scatter.`,
    read: [
      ...new Set(readings.flatMap(({ notes }) => notes)),
      ...(ppm === undefined ? [] : ['read ppm of alkalinity as mg/L of CaCO3']),
    ],
    facts: [
      {
        label: '8 dKH would read',
        value: inUnit(
          'alkalinity',
          readQuantity('alkalinity', '8 dKH', { field: 'x' }).value,
          'ppm CaCO3',
          0,
        ),
      },
    ],
    steps: [
      'Test a standard, or fresh salt water whose alkalinity you know, with both kits.',
      'Check the expiry dates, the sample volume and that the colour change was carried to the end: some kits stop early in sea water and read low.',
      'Keep the kit that matches the standard. Do not take the mean of the two.',
    ],
    working: ['1 meq/L = 2.804 dKH = 50.04 mg/L CaCO3'],
    sources: ['dkh', 'iupac21', 'practice'],
  });
};
