import { Problem } from '../../problem.ts';
import { fixed, significant, toUnit, volume } from '../../quantity/format.ts';
import { readQuantity, type Quantity } from '../../quantity/read.ts';
import { definitionOf, type QuantityKind } from '../../quantity/unit.ts';
import type { SourceCode } from '../../sources.ts';
import { seawaterMgKg, seawaterMgL } from '../../water/reference-seawater.ts';
import { densityKgM3 } from '../../water/seawater.ts';
import type { Claim, Judge, Verdict } from '../claim.ts';
import { has, tied } from '../stated.ts';
import { termsIn } from '../terms.ts';
import { against, againstNumber } from '../verdict.ts';

const KINDS: readonly QuantityKind[] = [
  'volume',
  'mass',
  'alkalinity',
  'phosphate',
  'nitrate',
  'temperature',
  'conductivity',
  'length',
  'concentration',
];

/** Temperatures are compared by their distance, deg C: this project's own choice. */
const TEMP_C = { right: 0.3, roughly: 1 } as const;

/** "1 gal is 4 L", "1 meq is 2.8 dKH", "78 F is 25.5 C", "1 ppm is 1000 ppb". */
export const equalUnits: Judge = (stated) => {
  const [first, second, other] = stated.amounts;
  if (first === undefined || second === undefined || other !== undefined) return undefined;
  if (!tied(stated, first.end, second.start, 'is') && !has(stated, 'sums.same')) return undefined;
  for (const kind of KINDS) {
    const [left, right] = [attempt(kind, first.text), attempt(kind, second.text)];
    if (left === undefined || right === undefined || left.unit === right.unit) continue;
    if (left.value <= 0 || right.value <= 0) return undefined;
    return judged(left, right);
  }
  return undefined;
};

const sources: Partial<Record<QuantityKind, readonly SourceCode[]>> = {
  alkalinity: ['dkh', 'iupac21'],
  phosphate: ['iupac21'],
  nitrate: ['iupac21'],
};

const shown = (value: number, unit: string): string => `${significant(value, 4)} ${unit}`;

function judged(left: Quantity, right: Quantity): Claim {
  const { kind } = left;
  const real = toUnit(kind, left.value, right.unit);
  return {
    kind: 'two units',
    rule: `${shown(left.written, left.unit)} is ${shown(right.written, right.unit)}`,
    verdict:
      kind === 'temperature' ? byDegrees(right.value - left.value) : againstNumber(right.value, left.value),
    figure: `${shown(left.written, left.unit)} is ${shown(real, right.unit)}`,
    working: [
      `${definitionOf(kind).label}: both in ${definitionOf(kind).canonical}, ${significant(left.value, 5)} against ${significant(right.value, 5)}`,
      ...left.notes,
      ...right.notes,
    ],
    ...(kind === 'volume'
      ? {
          following: (waterL: number) => {
            const low = (waterL * right.value) / left.value;
            return {
              words: `${volume(waterL)} counted by the rule comes to ${volume(low)}: every dose by it is ${against(right.value, left.value)}`,
              low,
              high: low,
              unit: 'L',
            };
          },
        }
      : {}),
    sources: sources[kind] ?? ['si19'],
  };
}

function byDegrees(difference: number): Verdict {
  if (Math.abs(difference) <= TEMP_C.right) return 'right';
  return Math.abs(difference) <= TEMP_C.roughly ? 'roughly right' : 'wrong';
}

function attempt(kind: QuantityKind, text: string): Quantity | undefined {
  try {
    return readQuantity(kind, text, { field: 'rule' });
  } catch (error) {
    if (error instanceof Problem) return undefined;
    throw error;
  }
}

const MG_L = ['mg/l', 'mg per l', 'mg per litre', 'mg per liter'];

/** "ppm is the same as mg/L": by weight against by volume. */
export const ppmAsMgL: Judge = (stated) => {
  const isBoth = [['ppm'], MG_L].every((names) => termsIn(stated, names).length > 0);
  if (!isBoth || stated.amounts.length > 0) return undefined;
  const kgL = densityKgM3(35, 25) / 1000;
  const [mgL, mgKg] = [seawaterMgL('Ca', 35, 25), seawaterMgKg('Ca', 35)];
  const percent = (mgL / mgKg - 1) * 100;
  return {
    kind: 'ppm and mg/L',
    rule: 'ppm is the same as mg/L',
    verdict: 'roughly right',
    figure: `test kits mean mg/L by ppm; true ppm (mg/kg) are ${significant(percent, 2)} % fewer in seawater: ${fixed(mgL, 1)} mg/L of calcium are ${fixed(mgKg, 1)} mg/kg`,
    working: [`a litre of seawater (S 35, 25 °C) weighs ${significant(kgL, 5)} kg`],
    example: {
      words: `a laboratory value of ${fixed(mgKg, 0)} mg/kg of calcium taken as mg/L reads low: it is ${fixed(mgL, 0)} mg/L, ${significant(percent, 2)} % more`,
      low: mgL,
      high: mgL,
      unit: 'mg/L',
    },
    sources: ['fm83', 'm08'],
  };
};
