import { feedingAdds, foods, foodsBasis, type Food } from '../../corals/feeding.ts';
import { fixed, significant, volume } from '../../quantity/format.ts';
import { molarMass } from '../../quantity/molar-mass.ts';
import type { Judge } from '../claim.ts';
import { ratioToOne } from '../ratio.ts';
import { levelOf, litresOf, weighedG } from '../salts.ts';
import { has, is, type Stated } from '../stated.ts';
import { againstNumber } from '../verdict.ts';

/** Nitrogen to phosphorus in plankton, by atoms (redfield). */
const REDFIELD_ATOMS = 16;
const NO3_PO4 = (REDFIELD_ATOMS * molarMass({ N: 1, O: 3 })) / molarMass({ P: 1, O: 4 });

/** "nitrate to phosphate should be 16:1": atoms taken for milligrams. */
export const nitrateToPhosphate: Judge = (stated) => {
  const { parameters } = stated;
  const isBoth = parameters.includes('nitrate') && parameters.includes('phosphate');
  const claimed = isBoth ? ratioToOne(stated) : undefined;
  if (claimed === undefined || !(claimed > 0.5 && claimed < 1000)) return undefined;
  const verdict = againstNumber(claimed, NO3_PO4);
  return {
    kind: 'nitrate to phosphate',
    rule: `nitrate to phosphate is ${claimed} : 1 as tests read them`,
    verdict: verdict === 'right' ? 'roughly right' : verdict,
    figure: `plankton takes 16 N for each P by atoms, which is ${significant(NO3_PO4, 3)} : 1 in mg/L of NO3 and PO4; it is no target for a tank`,
    working: [`16 x 62.004 / 94.97 = ${fixed(NO3_PO4, 2)}`],
    example: {
      words: `at nitrate 10 mg/L the rule wants phosphate ${significant(10 / claimed, 2)} mg/L, the atoms ${significant(10 / NO3_PO4, 2)}; 0.03 to 0.1 is usual`,
      low: 10 / claimed,
      high: 10 / claimed,
      unit: 'mg/L',
    },
    steps: [
      'Keep each in its own range.',
      'Do not dose one to meet a ratio with the other. Zero of either is the usual trouble.',
    ],
    sources: ['redfield', 'iupac21', 'practice'],
  };
};

const FOOD_CLASSES = [
  'substances.food',
  'substances.dryFood',
  'substances.frozenFood',
  'substances.coralFood',
];

function foodNamed({ words }: Stated): Food | undefined {
  return (Object.keys(foods) as Food[]).find((food) =>
    words.some(({ token: { word } }) => word === food || word === `${food}s`),
  );
}

/** "1 g of flake food adds 1 ppm nitrate in 100 gal": an upper bound. */
export const foodAsNitrate: Judge = (stated) => {
  const { amounts, salts, parameters } = stated;
  const base = amounts.find((amount) => is(amount, 'volume') && !is(amount, 'mass'));
  const grams = amounts.find((amount) => is(amount, 'mass'));
  const rise = amounts.find((amount) => is(amount, 'nitrate') || is(amount, 'bare'));
  if (!has(stated, ...FOOD_CLASSES) || salts.length > 0 || !parameters.includes('nitrate')) return undefined;
  if (base === undefined || grams === undefined || rise === undefined || rise.value <= 0) return undefined;
  const named = foodNamed(stated);
  const kinds: readonly Food[] = named === undefined ? ['frozen', 'flake', 'pellet'] : [named];
  const [massG, litres, riseMgL] = [weighedG(grams), litresOf(base), levelOf('nitrate', rise)];
  const each = kinds.map((food) => feedingAdds(massG, litres, food));
  const span = {
    low: Math.min(...each.map(({ nitrateMgL }) => nitrateMgL.low)),
    high: Math.max(...each.map(({ nitrateMgL }) => nitrateMgL.high)),
  };
  return {
    kind: 'food as nitrate',
    rule: `${grams.text} of ${named ?? 'food'} adds ${rise.text} of nitrate in ${base.text}`,
    verdict: riseMgL > span.high * 1.12 ? 'wrong' : 'depends',
    figure: `the most it can add is ${significant(span.low, 2)} to ${significant(span.high, 2)} mg/L, if every bit of its protein became nitrate and nothing was taken out`,
    working: ['protein / 6.25 = nitrogen, nitrogen x 4.427 = nitrate', `shares of food: ${foodsBasis}`],
    following: (waterL) => {
      const fed = kinds.map((food) => feedingAdds(1, waterL, food).nitrateMgL);
      const [low, high] = [Math.min(...fed.map((f) => f.low)), Math.max(...fed.map((f) => f.high))];
      const byRule = (riseMgL * litres) / massG / waterL;
      return {
        words: `each gram fed in ${volume(waterL)} can add at most ${significant(low, 2)} to ${significant(high, 2)} mg/L; the rule says ${significant(byRule, 2)}`,
        low,
        high,
        unit: 'mg/L',
      };
    },
    steps: ['Test before and after a week of usual feeding: that is what your own tank keeps of it.'],
    sources: ['redfield', 'iupac21', 'practice'],
  };
};
