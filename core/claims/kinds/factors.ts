import { fixed, significant } from '../../quantity/format.ts';
import { molarMass } from '../../quantity/molar-mass.ts';
import { DKH_PER_MEQ_L, MG_CACO3_PER_MEQ, NO3_PER_N, PO4_PER_P } from '../../quantity/unit.ts';
import type { SourceCode } from '../../sources.ts';
import type { Claim, Judge } from '../claim.ts';
import { is, tied, type Amount, type Stated } from '../stated.ts';
import { termsIn, type Term } from '../terms.ts';
import { against, againstNumber } from '../verdict.ts';

/** `to` = `from` x factor. */
interface Factor {
  readonly from: string;
  readonly fromWords: readonly string[];
  readonly to: string;
  readonly toWords: readonly string[];
  readonly factor: number;
  /** A reading to show the rule on, in `from`, and how the factor comes about. */
  readonly example: number;
  readonly how: string;
  readonly sources: readonly SourceCode[];
}

const N = molarMass({ N: 1 });
const CACO3 = ['ppm caco3', 'ppm as caco3', 'mg/l caco3', 'ppm', 'mg/l', 'caco3'];
const DKH = ['dkh', 'kh'];
const MEQ = ['meq/l', 'meq'];

const factors: readonly Factor[] = [
  {
    from: 'dKH',
    fromWords: DKH,
    to: 'ppm CaCO3',
    toWords: CACO3,
    factor: MG_CACO3_PER_MEQ / DKH_PER_MEQ_L,
    example: 8,
    how: 'one degree is 10 mg CaO per litre: 100.086 / 56.077 x 10',
    sources: ['dkh', 'iupac21'],
  },
  {
    from: 'meq/L',
    fromWords: MEQ,
    to: 'dKH',
    toWords: DKH,
    factor: DKH_PER_MEQ_L,
    example: 3,
    how: 'one meq is 28.04 mg CaO: 56.077 / 2 / 10',
    sources: ['dkh', 'iupac21'],
  },
  {
    from: 'meq/L',
    fromWords: MEQ,
    to: 'ppm CaCO3',
    toWords: CACO3,
    factor: MG_CACO3_PER_MEQ,
    example: 3,
    how: 'CaCO3 counts twice: 100.086 / 2',
    sources: ['iupac21'],
  },
  {
    from: 'NO3-N',
    fromWords: ['no3-n', 'nitrate-n', 'nitrate nitrogen', 'nitrogen', 'n'],
    to: 'NO3',
    toWords: ['no3', 'nitrate', 'nitrates'],
    factor: NO3_PER_N,
    example: 5,
    how: '62.004 / 14.007',
    sources: ['iupac21'],
  },
  {
    from: 'PO4-P',
    fromWords: ['po4-p', 'phosphate-p', 'phosphorus', 'p'],
    to: 'PO4',
    toWords: ['po4', 'phosphate', 'phosphates'],
    factor: PO4_PER_P,
    example: 0.02,
    how: '94.97 / 30.974',
    sources: ['iupac21'],
  },
  {
    from: 'NO2-N',
    fromWords: ['no2-n', 'nitrite-n'],
    to: 'NO2',
    toWords: ['no2', 'nitrite', 'nitrites'],
    factor: molarMass({ N: 1, O: 2 }) / N,
    example: 0.1,
    how: '46.005 / 14.007',
    sources: ['iupac21'],
  },
  {
    from: 'NH3-N',
    fromWords: ['nh3-n', 'ammonia-n'],
    to: 'NH3',
    toWords: ['nh3', 'ammonia'],
    factor: molarMass({ N: 1, H: 3 }) / N,
    example: 0.5,
    how: '17.031 / 14.007',
    sources: ['iupac21'],
  },
  {
    from: 'NH4-N',
    fromWords: ['nh4-n', 'ammonium-n'],
    to: 'NH4',
    toWords: ['nh4', 'ammonium'],
    factor: molarMass({ N: 1, H: 4 }) / N,
    example: 0.5,
    how: '18.039 / 14.007',
    sources: ['iupac21'],
  },
];

/** "ppm is dKH x 17.9", "multiply meq by 2.8 to get dKH", "no3 to N is 4.4": the factor between two ways to write it. */
export const unitFactor: Judge = (stated) => {
  const [number, other] = stated.amounts;
  if (number === undefined || other !== undefined || !(number.value > 0)) return undefined;
  if (!is(number, 'bare') && !is(number, 'times')) return undefined;
  for (const each of factors) {
    const claimed = factorSaid(stated, number, each);
    if (claimed !== undefined) return judged(each, claimed);
  }
  return undefined;
};

/**
 * The factor from `from` to `to` that a rule says. What is multiplied or divided is the unit right before the number (or
 * behind "2.8 times"); a bare ratio is taken the way that comes nearer.
 */
function factorSaid(
  stated: Stated,
  number: Amount,
  { fromWords, toWords, factor }: Factor,
): number | undefined {
  const froms = termsIn(stated, fromWords);
  const tos = termsIn(stated, toWords).filter((term) => !froms.some((from) => overlap(from, term)));
  if (froms.length === 0 || tos.length === 0) return undefined;
  const { value, start, end } = number;
  const last = [...froms, ...tos].filter((term) => term.end <= start).sort((a, b) => b.end - a.end)[0];
  const next = [...froms, ...tos].filter((term) => term.start >= end).sort((a, b) => a.start - b.start)[0];
  const isOver = tied(stated, 0, start, 'over');
  const isTimes = is(number, 'times') || tied(stated, 0, start, 'times');
  if (!isOver && !isTimes) {
    if (!tied(stated, 0, start, 'is')) return undefined;
    return Math.abs(Math.log(value / factor)) < Math.abs(Math.log(1 / value / factor)) ? value : 1 / value;
  }
  const operand =
    is(number, 'times') && last !== undefined && !tied(stated, last.end, start, 'times') ? next : last;
  if (operand === undefined) return undefined;
  return froms.includes(operand) === isOver ? 1 / value : value;
}

function overlap(a: Term, b: Term): boolean {
  return a.start < b.end && b.start < a.end;
}

function judged(each: Factor, claimed: number): Claim {
  const { from, to, factor, example, how, sources } = each;
  return {
    kind: 'factor between units',
    rule: `${to} = ${from} x ${significant(claimed, 4)}`,
    verdict: againstNumber(claimed, factor),
    figure: `${to} = ${from} x ${significant(factor, 4)}`,
    working: [`${how} = ${fixed(factor, 3)}`],
    example: {
      words: `a reading of ${example} ${from} is ${significant(example * factor, 3)} ${to}; by the rule ${significant(example * claimed, 3)}: ${against(claimed, factor)}`,
      low: example * claimed,
      high: example * claimed,
      unit: to,
    },
    sources,
  };
}
