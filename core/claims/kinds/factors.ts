import { fixed, significant } from '../../quantity/format.ts';
import { molarMass } from '../../quantity/molar-mass.ts';
import { DKH_PER_MEQ_L, MG_CACO3_PER_MEQ, NO3_PER_N, PO4_PER_P } from '../../quantity/unit.ts';
import type { SourceCode } from '../../sources.ts';
import type { Claim, Recogniser } from '../claim.ts';
import { NUM } from '../rule-text.ts';
import { against, againstNumber } from '../verdict.ts';

/** `to` = `from` x factor. */
interface Factor {
  readonly from: string;
  readonly fromWords: string;
  readonly to: string;
  readonly toWords: string;
  readonly factor: number;
  /** A reading to show the rule on, in `from`, and how the factor comes about. */
  readonly example: number;
  readonly how: string;
  readonly sources: readonly SourceCode[];
}

const N = molarMass({ N: 1 });
const CACO3 = String.raw`(?:ppm|mg\/l)(?:\s*(?:of\s*|as\s*)?caco3)?|caco3`;
const P = String.raw`po4-p|phosphorus|phosphate-p|p`;
const NITROGEN = String.raw`no3-n|nitrate-n|nitrogen|nitrate nitrogen|n`;

const factors: readonly Factor[] = [
  {
    from: 'dKH',
    fromWords: String.raw`d?kh`,
    to: 'ppm CaCO3',
    toWords: CACO3,
    factor: MG_CACO3_PER_MEQ / DKH_PER_MEQ_L,
    example: 8,
    how: 'one degree is 10 mg CaO per litre: 100.086 / 56.077 x 10',
    sources: ['dkh', 'iupac21'],
  },
  {
    from: 'meq/L',
    fromWords: String.raw`meq(?:\/l)?`,
    to: 'dKH',
    toWords: String.raw`d?kh`,
    factor: DKH_PER_MEQ_L,
    example: 3,
    how: 'one meq is 28.04 mg CaO: 56.077 / 2 / 10',
    sources: ['dkh', 'iupac21'],
  },
  {
    from: 'meq/L',
    fromWords: String.raw`meq(?:\/l)?`,
    to: 'ppm CaCO3',
    toWords: CACO3,
    factor: MG_CACO3_PER_MEQ,
    example: 3,
    how: 'CaCO3 counts twice: 100.086 / 2',
    sources: ['iupac21'],
  },
  {
    from: 'NO3-N',
    fromWords: NITROGEN,
    to: 'NO3',
    toWords: String.raw`no3(?!-)|nitrates?(?!-| nitrogen)`,
    factor: NO3_PER_N,
    example: 5,
    how: '62.004 / 14.007',
    sources: ['iupac21'],
  },
  {
    from: 'PO4-P',
    fromWords: P,
    to: 'PO4',
    toWords: String.raw`po4(?!-)|phosphates?(?!-)`,
    factor: PO4_PER_P,
    example: 0.02,
    how: '94.97 / 30.974',
    sources: ['iupac21'],
  },
  {
    from: 'NO2-N',
    fromWords: String.raw`no2-n|nitrite-n`,
    to: 'NO2',
    toWords: String.raw`no2(?!-)|nitrites?(?!-)`,
    factor: molarMass({ N: 1, O: 2 }) / N,
    example: 0.1,
    how: '46.005 / 14.007',
    sources: ['iupac21'],
  },
  {
    from: 'NH3-N',
    fromWords: String.raw`nh3-n|ammonia-n`,
    to: 'NH3',
    toWords: String.raw`nh3(?!-)|ammonia(?!-)`,
    factor: molarMass({ N: 1, H: 3 }) / N,
    example: 0.5,
    how: '17.031 / 14.007',
    sources: ['iupac21'],
  },
  {
    from: 'NH4-N',
    fromWords: String.raw`nh4-n|ammonium-n`,
    to: 'NH4',
    toWords: String.raw`nh4(?!-)|ammonium(?!-)`,
    factor: molarMass({ N: 1, H: 4 }) / N,
    example: 0.5,
    how: '18.039 / 14.007',
    sources: ['iupac21'],
  },
];

const TIMES = String.raw`\s*(?:x|\*|times|multiplied by)\s*`;
const OVER = String.raw`\s*(?:\/|divided by)\s*`;
const EQ = String.raw`\s*(?:=|\bis\b|\bgives\b|\bequals\b|\bto get\b|\bfor\b|\bmakes\b)\s*(?:the\s+)?`;

interface Said {
  readonly claimed: number;
}

/** "ppm is dKH x 17.9", "multiply meq by 2.8 to get dKH", "no3 to N is 4.4": the factor between two ways to write it. */
export const unitFactor: Recogniser = ({ text }) => {
  for (const each of factors) {
    const found = saidFactor(text, each);
    if (found !== undefined) return judged(each, found.claimed);
  }
  return undefined;
};

function saidFactor(text: string, { fromWords, toWords, factor }: Factor): Said | undefined {
  const [a, b] = [word(fromWords), word(toWords)];
  const first = (...patterns: readonly string[]): number | undefined => {
    const found = patterns.map((p) => new RegExp(p).exec(text)?.[1]).find((n) => n !== undefined);
    return found === undefined || !(Number(found) > 0) ? undefined : Number(found);
  };
  const times = first(
    `${a}${TIMES}${NUM}${EQ}${b}`,
    `${b}${EQ}${a}${TIMES}${NUM}`,
    `${b}${OVER}${NUM}${EQ}${a}`,
    `${a}${EQ}${b}${OVER}${NUM}`,
    ...spoken(text, a, b),
  );
  if (times !== undefined) return { claimed: times };
  const ratio = first(
    String.raw`(?:${a}\s+to\s+${b}|${b}\s+to\s+${a}|${a}\s*->\s*${b})(?:\s+(?:conversion|factor))*${EQ}(?:x\s*|times\s*|about\s*)?${NUM}`,
  );
  if (ratio === undefined) return undefined;
  return {
    claimed: Math.abs(Math.log(ratio / factor)) < Math.abs(Math.log(1 / ratio / factor)) ? ratio : 1 / ratio,
  };
}

/** "multiply meq by 2.8", "divide ppm by 50", where the other unit is named too. */
function spoken(text: string, a: string, b: string): readonly string[] {
  if (!new RegExp(a).test(text) || !new RegExp(b).test(text)) return [];
  return [
    String.raw`\bmultiply\s+(?:the\s+)?${a}\s+by\s+${NUM}`,
    String.raw`\bdivide\s+(?:the\s+)?${b}\s+by\s+${NUM}`,
  ];
}

function word(alternatives: string): string {
  return String.raw`(?<![a-z0-9-])(?:${alternatives})(?![a-z0-9])`;
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
