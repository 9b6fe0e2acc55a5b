import { hazard } from '../../care/hazards.ts';
import { amountG, supplyPerG } from '../../dosing/dose.ts';
import { fixed, mass, significant, volume } from '../../quantity/format.ts';
import { parameter } from '../../water/parameter.ts';
import type { Judge } from '../claim.ts';
import { canonical, dosedFor, gramsOf, isSpoon, TEASPOON_L, weighedG } from '../salts.ts';
import { is, isBase } from '../stated.ts';
import { against, againstNumber, againstSpan, spanAgainst } from '../verdict.ts';

/** "calcium chloride is 36 % calcium", "epsom salt is 10 % magnesium": the metal in a salt. */
export const elementShare: Judge = ({ salts, amounts, parameters }) => {
  const [salt, other] = salts;
  const [share, more] = amounts;
  if (salt === undefined || other !== undefined || share === undefined || more !== undefined)
    return undefined;
  const id = parameters.find((each) => salt.forms[0].raises.includes(each) && each !== 'alkalinity');
  if (id === undefined || !is(share, 'share') || share.value <= 0) return undefined;
  const { label, unit } = parameter(id);
  const real = salt.forms.map((form) => ({ form, percent: supplyPerG(form, id) / 10 }));
  const span = {
    low: Math.min(...real.map((r) => r.percent)),
    high: Math.max(...real.map((r) => r.percent)),
  };
  const exact = real.length === 1;
  const near = real.find((r) => againstNumber(share.value, r.percent) === 'right');
  return {
    kind: 'share of a metal',
    rule: `${salt.label} is ${share.value} % ${label} by weight`,
    verdict: exact ? againstNumber(share.value, span.low) : near === undefined ? 'wrong' : 'depends',
    figure: `${real.map(({ form, percent }) => `${exact ? form.name : form.formula} holds ${fixed(percent, 1)} %`).join(', ')} ${label}`,
    working: real.map((r) => `${r.form.formula}: ${significant(r.percent * 10, 4)} mg of ${label} per gram`),
    following: (waterL) => {
      const [dosed] = exact ? real : [...real].sort((a, b) => a.percent - b.percent);
      const low = (10 * (dosed?.percent ?? span.low)) / share.value;
      const high = (10 * span.high) / share.value;
      return {
        words: `for +10 ${unit} in ${volume(waterL)} the rule weighs out ${mass(waterL / share.value)}: ${low === high ? significant(low, 3) : `${significant(low, 3)} to ${significant(high, 3)}`} ${unit}, ${spanAgainst({ low, high }, 10)}`,
        low,
        high,
        unit,
      };
    },
    steps: ['Read on the bag which form it is; the crystal water in it counts as weight.'],
    dangers: hazard(salt.forms[0].hazard).dangers,
    sources: ['iupac21', hazard(salt.forms[0].hazard).basis],
  };
};

/** "a teaspoon of baking soda weighs 5 g". */
export const spoonWeight: Judge = (stated) => {
  const [salt, other] = stated.salts;
  const spoon = stated.amounts.find(isSpoon);
  const said = stated.amounts.find((amount) => amount !== spoon && is(amount, 'mass'));
  if (salt === undefined || other !== undefined || spoon === undefined || said === undefined)
    return undefined;
  const grams = gramsOf(spoon, salt);
  const claimed = weighedG(said);
  if (grams === undefined || claimed <= 0 || stated.amounts.length !== 2 || isBase(stated, said))
    return undefined;
  const id = dosedFor(salt);
  const form = salt.forms[0];
  const factor = { low: grams.low / claimed, high: grams.high / claimed };
  return {
    kind: 'weight of a spoon',
    rule: `${spoon.text} of ${salt.label} weighs ${said.text}`,
    verdict: againstSpan(claimed, grams),
    figure: `${spoon.text} of ${salt.label}, level, weighs about ${significant(grams.low, 3)} to ${significant(grams.high, 3)} g (common practice); how fine and how packed it is decides`,
    working: [`a level teaspoon (${TEASPOON_L * 1000} mL) taken as ${(form.teaspoonG ?? []).join(' to ')} g`],
    following: (waterL) => {
      const needG = amountG(form, id, canonical(id, 1), waterL);
      return {
        words: `+1 ${parameter(id).unit} in ${volume(waterL)} takes ${mass(needG)}; spooned by the rule: ${significant(factor.low, 2)} to ${significant(factor.high, 2)} ${parameter(id).unit}, ${spanAgainst(factor, 1)}`,
        low: factor.low,
        high: factor.high,
        unit: parameter(id).unit,
      };
    },
    steps: ['Weigh it: a kitchen scale that shows 0.1 g costs little.'],
    dangers: hazard(form.hazard).dangers,
    sources: ['practice', 'iupac21', hazard(form.hazard).basis],
  };
};

/** "100 g of baking soda bakes into 50 g of soda ash": both hold the same alkalinity. */
export const bakedYield: Judge = ({ salts, amounts }) => {
  const [from, to] = salts;
  const [before, after] = amounts.filter((amount) => is(amount, 'mass') && !isSpoon(amount));
  if (from?.label !== 'sodium bicarbonate' || to?.label !== 'sodium carbonate' || amounts.length !== 2)
    return undefined;
  if (before === undefined || after === undefined) return undefined;
  const [beforeG, afterG] = [weighedG(before), weighedG(after)];
  if (beforeG <= 0 || afterG <= 0) return undefined;
  const ratio = supplyPerG(from.forms[0], 'alkalinity') / supplyPerG(to.forms[0], 'alkalinity');
  return {
    kind: 'yield of baking',
    rule: `${mass(beforeG)} of baking soda bakes into ${mass(afterG)} of soda ash`,
    verdict: againstNumber(afterG, beforeG * ratio),
    figure: `fully baked, ${mass(beforeG)} leaves ${mass(beforeG * ratio)} of soda ash with the same alkalinity`,
    working: [`2 NaHCO3 gives Na2CO3, water and CO2: 105.99 / (2 x 84.01) = ${fixed(ratio, 3)}`],
    following: (waterL) => {
      const low = afterG / beforeG / ratio;
      const need = amountG(to.forms[0], 'alkalinity', canonical('alkalinity', 1), waterL);
      return {
        words: `+1 dKH in ${volume(waterL)} takes ${mass(need)} of soda ash; by the rule it gets ${mass(need * low)}: ${significant(low, 3)} dKH, ${against(low, 1)}`,
        low,
        high: low,
        unit: 'dKH',
      };
    },
    steps: ['Weigh the powder before and after: when the weight no longer falls it is done.'],
    dangers: hazard('carbonate').dangers,
    sources: ['iupac21', 'ghs'],
  };
};
