import { afterSaltTopOff, baggedMixGPerL, drySaltGPerL } from '../../change/salt.ts';
import { fixed, mass, significant, toUnit, volume } from '../../quantity/format.ts';
import { readQuantity } from '../../quantity/read.ts';
import { densityKgM3 } from '../../water/seawater.ts';
import { is } from '../../words/mention.ts';
import type { Recogniser } from '../claim.ts';
import { IS, NUM } from '../rule-text.ts';
import { baseIn } from '../salts.ts';
import { against, againstNumber, againstSpan, spanAgainst } from '../verdict.ts';

/** "1 ppt = 1 g per L", "35 g of salt per litre makes 35 ppt". */
export const saltPerLitre: Recogniser = (heard) => {
  const base =
    heard.mentions.find(
      (m) => is(m, 'volume') && /(?:per|\/|to|in|into|of)\s*$/.test(heard.text.slice(0, m.start)),
    ) ?? baseIn(heard);
  const grams = heard.mentions.find((m) => m !== base && is(m, 'mass'));
  const ppt = heard.mentions.find(
    (m) => is(m, 'salinity') && m.value > 0 && (m.value < 1 || m.value >= 1.05 || m.value === 1),
  );
  if (grams === undefined || base === undefined || ppt === undefined || heard.compounds.length > 0)
    return undefined;
  if (!/=|\b(?:is|equals?|makes?|gives?|raises?|for|per|to)\b/.test(heard.text) || ppt.value > 42)
    return undefined;
  const perL =
    readQuantity('mass', grams.text, { field: 'rule' }).value /
    readQuantity('volume', base.text, { field: 'rule' }).value;
  const each = perL / ppt.value;
  const [dry, bag] = [drySaltGPerL(35).asPpt / 35, baggedMixGPerL(35)];
  const span = { low: dry, high: bag.high / 35 };
  return {
    kind: 'salt per litre',
    rule: `${significant(perL, 3)} g of salt per litre makes ${ppt.text}`,
    verdict: againstSpan(each, span),
    figure: `35 ppt takes ${fixed(dry * 35, 1)} g of dry sea salt in a litre of finished water, and ${fixed(bag.low, 0)} to ${fixed(bag.high, 0)} g from the bag with its moisture (common practice): ${fixed(span.low, 2)} to ${fixed(span.high, 2)} g for each ppt`,
    working: [`35 g/kg x ${fixed(densityKgM3(35, 25) / 1000, 4)} kg/L = ${fixed(dry * 35, 1)} g/L`],
    following: (waterL) => {
      const [low, high] = [(35 * each) / span.high, (35 * each) / span.low];
      return {
        words: `${volume(waterL)} mixed for 35 ppt by the rule gets ${mass(each * 35 * waterL)} and comes out at ${significant(low, 3)} to ${significant(high, 3)} ppt, ${spanAgainst({ low, high }, 35)}`,
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
export const cupsOfSalt: Recogniser = (heard) => {
  const cups = heard.mentions.find((m) => /cups?$/.test(m.text));
  const base = heard.mentions.find((m) => m !== cups && is(m, 'volume'));
  if (cups === undefined || base === undefined || !/\b(?:salt|mix)\b/.test(heard.text)) return undefined;
  if (/\b(?:bin|batch|how much|how many)\b/.test(heard.text) || heard.compounds.length > 0) return undefined;
  const litres = readQuantity('volume', base.text, { field: 'rule' }).value;
  const gL = { low: (CUP_G.low * cups.value) / litres, high: (CUP_G.high * cups.value) / litres };
  const [bag, dry] = [baggedMixGPerL(35), drySaltGPerL(35).asPpt];
  const s = { low: (35 * gL.low) / bag.high, high: (35 * gL.high) / dry };
  const needCup = { low: (bag.low * litres) / cups.value, high: (bag.high * litres) / cups.value };
  return {
    kind: 'cups of salt',
    rule: `${cups.text} of salt mix per ${base.text} makes 35 ppt`,
    verdict: s.low > 37 || s.high < 33 ? 'wrong' : 'depends',
    figure: `it is right only if a cup of that mix weighs ${fixed(needCup.low, 0)} to ${fixed(needCup.high, 0)} g; cups of salt weigh about ${CUP_G.low} to ${CUP_G.high} g (common practice), so it can come out anywhere from ${fixed(s.low, 0)} to ${fixed(s.high, 0)} ppt`,
    working: [
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
export const saltTopOff: Recogniser = ({ text }) => {
  const tops = /\btop(?:ping|ped|s)?[- ]?(?:off|up)?\b[^.?]{0,25}\bsalt ?water\b/.test(text);
  const evaporates =
    /\bsalt evaporates\b|\bevaporation (?:takes|removes|lowers|carries)\b[^.?]{0,20}\b(?:salt|salinity)\b/.test(
      text,
    );
  if ((!tops && !evaporates) || /\b(?:never|don't|do not|not)\b/.test(text)) return undefined;
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
      words: `where 1 % evaporates a day, a week of it puts ${volume(0.07 * waterL)} of salt water into ${volume(waterL)}: 35 ppt becomes ${fixed(after, 1)}`,
      low: after,
      high: after,
      unit: 'ppt',
    }),
    sources: ['mixing', 'practice'],
  };
};

const pounds = (kg: number): string => `${fixed(kg, 2)} kg (${fixed(toUnit('mass', kg * 1000, 'lb'), 2)} lb)`;

/** "a gallon of salt water weighs 8.5 lb". */
export const weightOfWater: Recogniser = ({ text }) => {
  const found = new RegExp(
    String.raw`${NUM}\s*((?:us |imp(?:erial)? |uk )?gal(?:lon)?s?|lit(?:er|re)s?|l)\b[^.?]{0,12}?\b((?:salt|sea)\s?)?water\b[^.?]{0,15}?(?:${IS}|\bweighs?\b\s*(?:about|around|roughly)?\s*)${NUM}\s*(lbs?|pounds?|kg|kilos?|g|grams?)\b`,
  ).exec(text);
  if (found === null) return undefined;
  const [, count = '', unit = '', salty, heavy = '', massUnit = ''] = found;
  const litres = readQuantity('volume', `${count} ${unit}`, { field: 'rule' }).value;
  const claimedKg = readQuantity('mass', `${heavy} ${massUnit}`, { field: 'rule' }).value / 1000;
  const kgL = densityKgM3(salty === undefined ? 0 : 35, 25) / 1000;
  return {
    kind: 'weight of water',
    rule: `${count} ${unit} of ${salty === undefined ? 'fresh' : 'salt'} water weighs ${heavy} ${massUnit}`,
    verdict: againstNumber(claimedKg, litres * kgL),
    figure: `${count} ${unit} of ${salty === undefined ? 'fresh water' : 'water at 35 ppt'} weighs ${pounds(litres * kgL)}`,
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
