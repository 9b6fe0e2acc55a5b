import { hazards } from '../../care/hazards.ts';
import { capacity, LIME_G_PER_MEQ, saturationGL } from '../../dosing/limewater.ts';
import { fixed, fromUnit, significant, span, volume } from '../../quantity/format.ts';
import { dkhFromMeqL } from '../../water/alkalinity.ts';
import type { Following, Judge, Verdict } from '../claim.ts';
import type { NamedSalt } from '../named-salts.ts';
import { amountIn, baseIn, gramsOf, litresOf, printed, printedBase } from '../salts.ts';
import { has, is, type Stated } from '../stated.ts';

const US_GALLON_L = fromUnit('volume', 1, 'US gal');
const { dangers } = hazards.lime;
const steps = [
  'Let it settle, dose only the clear part, drip it slowly, and keep pH at or below 8.5.',
] as const;

/** What a litre of limewater of `gL.low` to `gL.high` g per litre does. */
function perLitre(gL: { readonly low: number; readonly high: number }): (waterL: number) => Following {
  return (waterL) => {
    const [low, high] = [gL.low, gL.high].map((g) => dkhFromMeqL(capacity(1, g, waterL).alkMeqL));
    return {
      words: `each litre of it raises ${volume(waterL)} by ${significant(low ?? 0, 2)} to ${significant(high ?? 0, 2)} dKH and ${significant(capacity(1, gL.low, waterL).calciumMgL, 2)} to ${significant(capacity(1, gL.high, waterL).calciumMgL, 2)} mg/L of calcium`,
      low: low ?? 0,
      high: high ?? 0,
      unit: 'dKH',
    };
  };
}

/** As full as the figures themselves are sure: 1.5 g per litre is what is called saturated (project rule). */
const NEARLY = 0.97;

/** "kalk at 2 tsp per gallon": how much of it dissolves. */
export const limeByVolume: Judge = (stated) => {
  const lime = limeIn(stated);
  const amount = amountIn(stated);
  const base = baseIn(stated, amount);
  if (lime === undefined || base === undefined || amount === undefined) return undefined;
  if (stated.amounts.some((each) => is(each, 'alkalinity') && !is(each, 'concentration'))) return undefined;
  const grams = gramsOf(amount, lime);
  const litres = litresOf(base);
  if (grams === undefined || grams.low <= 0 || litres > 100) return undefined;
  const gL = { low: grams.low / litres, high: grams.high / litres };
  const most = saturationGL();
  const dissolved = { low: Math.min(gL.low, most.low), high: Math.min(gL.high, most.high) };
  const verdict: Verdict =
    gL.low > most.high ? 'wrong' : gL.high < most.low * NEARLY ? 'depends' : 'roughly right';
  const says = {
    wrong: 'more than can dissolve',
    depends: 'weaker than saturated',
    'roughly right': 'about as much as can dissolve',
  } as const;
  const besides = {
    wrong: { besides: 'the rest settles and makes nothing stronger' },
    depends: { besides: 'all of it dissolves; whether that is enough your daily use says' },
    'roughly right': {},
  } as const;
  return {
    kind: 'lime by volume',
    rule: `${printed(amount)} of lime per ${printedBase(base)} for limewater`,
    verdict,
    figure: `${says[verdict]}, ${span(significant(gL.low, 3), significant(gL.high, 3))} g per litre where ${significant(most.low, 3)} to ${significant(most.high, 3)} dissolve at 25 °C (${fixed(most.low * US_GALLON_L, 1)} to ${fixed(most.high * US_GALLON_L, 1)} g per US gallon)`,
    ...besides[verdict],
    working: [
      ...(grams.high > grams.low * 1.001
        ? ['a level teaspoon of lime taken as 2.5 to 3.5 g (common practice)']
        : []),
      `1 meq of alkalinity is ${fixed(LIME_G_PER_MEQ * 1000, 2)} mg of lime`,
    ],
    following: perLitre(dissolved),
    steps,
    dangers,
    sources: ['bates56', 'lange', 'memory', 'practice', 'ghs'],
  };
};

function limeIn({ salts }: Stated): NamedSalt | undefined {
  return salts.find(({ forms: [form] }) => form.hazard === 'lime');
}

/** "you can't overdose kalk", "more powder makes limewater stronger". */
export const limeSafety: Judge = (stated) => {
  const isLime = limeIn(stated) !== undefined || has(stated, 'substances.lime');
  if (!isLime || stated.amounts.some(({ kinds }) => kinds.length > 0)) return undefined;
  const cannot = has(stated, 'events.runsAway', 'manner.askOk') && has(stated, 'manner.negation');
  const isMore = has(stated, 'sums.riseBy', 'sums.double') && has(stated, 'sums.strength', 'manner.rise');
  if (!cannot && !isMore) return undefined;
  const most = saturationGL();
  const meq = most.low / LIME_G_PER_MEQ;
  return {
    kind: 'strength of limewater',
    rule: cannot ? 'limewater cannot be overdosed' : 'more powder makes stronger limewater',
    verdict: 'wrong',
    figure: cannot
      ? `clear limewater cannot get stronger than ${fixed(meq, 0)} meq/L, but too much of it, or sludge poured in, drives pH and alkalinity up fast`
      : `clear limewater holds at most ${significant(most.low, 3)} to ${significant(most.high, 3)} g per litre (${fixed(meq, 0)} meq/L); more powder only settles`,
    working: [`0.0203 mol/L x 2 = ${fixed(meq, 1)} meq/L at 25 °C`],
    following: perLitre(most),
    steps,
    dangers,
    sources: ['bates56', 'memory', 'ghs', 'practice'],
  };
};
