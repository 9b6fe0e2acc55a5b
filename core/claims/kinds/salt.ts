import { afterSaltTopOff, baggedMixGPerL, drySaltGPerL } from '../../change/salt.ts';
import { fixed, mass, significant, toUnit, volume } from '../../quantity/format.ts';
import { densityKgM3 } from '../../water/seawater.ts';
import type { Judge } from '../claim.ts';
import { litresOf, printedBase, volumeUnit, weighedG } from '../salts.ts';
import { has, is, isBase, tied, type Stated } from '../stated.ts';
import { against, againstNumber, againstSpan, spanAgainst } from '../verdict.ts';

const MOST_PPT = 42;

/** "1 ppt = 1 g per L", "35 g of salt per litre makes 35 ppt". */
export const saltPerLitre: Judge = ({ amounts, salts }) => {
  const base = amounts.find((amount) => is(amount, 'volume') && !is(amount, 'mass'));
  const grams = amounts.find((amount) => is(amount, 'mass'));
  const ppt = amounts.find((amount) => is(amount, 'salinity') && !is(amount, 'gravity') && amount.value > 0);
  if (grams === undefined || base === undefined || ppt === undefined || salts.length > 0) return undefined;
  if (ppt.value > MOST_PPT) return undefined;
  const perL = weighedG(grams) / litresOf(base);
  const each = perL / ppt.value;
  const [dry, bag] = [drySaltGPerL(35).asPpt / 35, baggedMixGPerL(35)];
  const span = { low: dry, high: bag.high / 35 };
  return {
    kind: 'salt per litre',
    rule: `${significant(perL, 3)} g of salt per litre makes ${ppt.text}`,
    verdict: againstSpan(each, span),
    figure: `35 ppt takes ${fixed(dry * 35, 1)} g of dry sea salt per litre, and ${fixed(bag.low, 0)} to ${fixed(bag.high, 0)} g from the bag: ${fixed(span.low, 2)} to ${fixed(span.high, 2)} g for each ppt`,
    working: [
      `35 g/kg x ${fixed(densityKgM3(35, 25) / 1000, 4)} kg/L = ${fixed(dry * 35, 1)} g/L of finished water`,
      'mix from the bag with its moisture: common practice',
    ],
    following: (waterL) => {
      const [low, high] = [(35 * each) / span.high, (35 * each) / span.low];
      return {
        words: `${volume(waterL)} for 35 ppt by the rule gets ${mass(each * 35 * waterL)}: ${significant(low, 3)} to ${significant(high, 3)} ppt, ${spanAgainst({ low, high }, 35)}`,
        low,
        high,
        unit: 'ppt',
      };
    },
    steps: ['Weigh in the lower amount, mix until clear, measure, then correct.'],
    sources: ['fm83', 'practice'],
  };
};

/** Grams a US cup of dry salt mix may hold. Common practice, no source: about 270, and cups differ by 10 to 15 %. */
const CUP_G = { low: 230, high: 310 } as const;

/** "half a cup of salt per gallon". */
export const cupsOfSalt: Judge = (stated) => {
  const [cups, base, other] = stated.amounts;
  if (cups === undefined || base === undefined || other !== undefined) return undefined;
  if (!is(cups, 'volume') || !is(base, 'volume') || volumeUnit(cups) !== 'US cup') return undefined;
  if (!has(stated, 'substances.saltMix') || stated.salts.length > 0 || has(stated, 'manner.askMuch'))
    return undefined;
  const litres = litresOf(base);
  const gL = { low: (CUP_G.low * cups.value) / litres, high: (CUP_G.high * cups.value) / litres };
  const [bag, dry] = [baggedMixGPerL(35), drySaltGPerL(35).asPpt];
  const s = { low: (35 * gL.low) / bag.high, high: (35 * gL.high) / dry };
  const needCup = { low: (bag.low * litres) / cups.value, high: (bag.high * litres) / cups.value };
  return {
    kind: 'cups of salt',
    rule: `${cups.text} of salt mix per ${base.text} makes 35 ppt`,
    verdict: s.low > 37 || s.high < 33 ? 'wrong' : 'depends',
    figure: `it is right only if a cup of that mix weighs ${fixed(needCup.low, 0)} to ${fixed(needCup.high, 0)} g; at ${CUP_G.low} to ${CUP_G.high} g it makes ${fixed(s.low, 0)} to ${fixed(s.high, 0)} ppt`,
    working: [
      `cups of salt weigh about ${CUP_G.low} to ${CUP_G.high} g (common practice)`,
      `35 ppt takes ${fixed(bag.low, 0)} to ${fixed(bag.high, 0)} g per litre; ${base.text} is ${volume(litres)}`,
    ],
    following: (waterL) => ({
      words: `${volume(waterL)} by the rule gets ${significant((cups.value * waterL) / litres, 3)} cups, ${mass(gL.low * waterL)} to ${mass(gL.high * waterL)} of mix: ${significant(s.low, 3)} to ${significant(s.high, 3)} ppt`,
      low: s.low,
      high: s.high,
      unit: 'ppt',
    }),
    steps: ['Weigh the salt, mix it in a bin of its own, measure with a checked instrument, then correct.'],
    sources: ['fm83', 'practice'],
  };
};

/** "top off with salt water to keep the salinity": salt does not evaporate. */
export const saltTopOff: Judge = (stated) => {
  if (stated.amounts.length > 0 || !has(stated, 'deeds.topsOff', 'parts.evaporation')) return undefined;
  if (!has(stated, 'substances.saltMix') && !stated.parameters.includes('salinity')) return undefined;
  if (has(stated, 'manner.negation', 'substances.roWater', 'manner.askMuch', 'manner.may')) return undefined;
  const tops = tied(stated, 0, stated.text.length, 'with');
  const evaporates = has(stated, 'sums.fallBy', 'manner.lower') || endsInEvaporation(stated);
  if (!tops && !evaporates) return undefined;
  const after = afterSaltTopOff(35, 35, 0.07);
  return {
    kind: 'salt water as top-off',
    rule: tops
      ? 'evaporated water is replaced with salt water'
      : 'salt leaves with the water that evaporates',
    verdict: 'wrong',
    figure:
      'only water evaporates and the salt stays, so top off with fresh (RO) water; salt water goes in where salt water came out',
    working: [`7 % of the volume in a week at 35 ppt: 35 + 35 x 0.07 = ${fixed(after, 2)} ppt`],
    following: (waterL) => ({
      words: `a week at 1 % a day puts ${volume(0.07 * waterL)} of salt water into ${volume(waterL)}: 35 ppt becomes ${fixed(after, 1)}`,
      low: after,
      high: after,
      unit: 'ppt',
    }),
    sources: ['mixing', 'practice'],
  };
};

/** "salt evaporates": nothing behind it. */
function endsInEvaporation({ words }: Stated): boolean {
  const last = words.findLast(({ token }) => token.word.length > 1);
  return last?.classes.includes('deeds.topsOff') ?? false;
}

const pounds = (kg: number): string => `${fixed(kg, 2)} kg (${fixed(toUnit('mass', kg * 1000, 'lb'), 2)} lb)`;

/** "a gallon of salt water weighs 8.5 lb". */
export const weightOfWater: Judge = (stated) => {
  const [base, weight, other] = stated.amounts;
  if (base === undefined || weight === undefined || other !== undefined || stated.salts.length > 0)
    return undefined;
  if (!is(base, 'volume') || !is(weight, 'mass') || isBase(stated, weight)) return undefined;
  if (!has(stated, 'parts.tank', 'substances.seaWater') || !tied(stated, base.end, weight.start, 'is'))
    return undefined;
  const isSalty = has(stated, 'substances.saltMix', 'substances.seaWater');
  const litres = litresOf(base);
  const claimedKg = weighedG(weight) / 1000;
  const kgL = densityKgM3(isSalty ? 35 : 0, 25) / 1000;
  return {
    kind: 'weight of water',
    rule: `${printedBase(base)} of ${isSalty ? 'salt' : 'fresh'} water weighs ${weight.text}`,
    verdict: againstNumber(claimedKg, litres * kgL),
    figure: `${printedBase(base)} of ${isSalty ? 'water at 35 ppt' : 'fresh water'} weighs ${pounds(litres * kgL)}`,
    working: [`${fixed(kgL, 4)} kg per litre at 25 °C x ${significant(litres, 4)} L`],
    following: (waterL) => {
      const low = waterL * kgL;
      return {
        words: `${volume(waterL)} weighs ${fixed(low, 0)} kg; by the rule ${fixed((waterL * claimedKg) / litres, 0)} kg, ${against(claimedKg, litres * kgL)}. Glass, rock and stand come on top`,
        low,
        high: low,
        unit: 'kg',
      };
    },
    sources: ['fm83'],
  };
};
